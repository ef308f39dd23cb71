import { expect, test } from 'vitest';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { titleRemarks } from '../../src/catalogue/rules/names.ts';
import { changed, markedCabinet } from './small-cabinet.ts';

async function remarksOn(title: string, sure: string): Promise<number> {
  const piece = `---\nnumber: "1"\ntitle: ${title}\nkind: coin\nmakers: [{ name: Fargrim, role: moneyer }]\n${sure}---\nA story.\n`;
  const folder = changed(await markedCabinet(), { 'pieces/one/piece.md': piece });
  return titleRemarks(readCabinet(folder).records).filter((remark) => remark.startsWith('pieces/one/')).length;
}

test.for([
  ['Penny by Fargrim', 'sure: { makers: probable }\n', 1],
  ['Penny, probably by Fargrim', 'sure: { makers: probable }\n', 0],
  ['Penny by Fargrim (?)', 'sure: { makers: possible }\n', 0],
  ['Penny by Fargrim', '', 0],
  ['Penny of Cnut', 'sure: { makers: probable }\n', 0],
] as const)('the title %s with “%s” has %i remarks', async ([title, sure, remarks]) => {
  expect(await remarksOn(title, sure)).toBe(remarks);
});
