import { defineConfig } from 'tsup';
import { entryFile, publicRooms } from './scripts/rooms.js';

export default defineConfig({
  entry: Object.fromEntries(publicRooms().map((room) => [room, entryFile(room)])),
  format: ['esm', 'cjs'],
  target: 'es2022',
  platform: 'neutral',
  // Rooms share their common code instead of carrying a copy each: one class InputError, whichever door it came through.
  splitting: true,
  clean: true,
  // TypeScript 6 refuses the base URL that the declaration build still sets.
  dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
});
