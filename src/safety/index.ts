export { NOTICES, SITUATIONS, type Notice, type Situation } from './notices.data.js';
export { noticesFor } from './notices-for.js';
