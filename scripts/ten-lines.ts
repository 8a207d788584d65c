// The short example of README.md and the output printed under it: what the packed library must print everywhere.

export interface TenLines {
  readonly code: string;
  readonly output: string;
}

/** The block of `ts` under `<!-- ten-lines -->` and the block of `text` under `<!-- ten-lines-output -->`. */
export function tenLines(markdown: string): TenLines {
  return { code: blockUnder(markdown, 'ten-lines', 'ts'), output: blockUnder(markdown, 'ten-lines-output', 'text').trimEnd() };
}

function blockUnder(markdown: string, marker: string, language: string): string {
  const fence = '```';
  const block = new RegExp(`^<!-- ${marker} -->\\n\\s*${fence}${language}\\n([\\s\\S]*?)^${fence}$`, 'mu').exec(markdown)?.[1];
  if (block === undefined || block.trim() === '') throw new Error(`no block of ${language} directly under the line <!-- ${marker} -->`);
  return block;
}
