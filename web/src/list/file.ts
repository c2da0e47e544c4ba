// A file's text, in any encoding in which spreadsheets save tables; or why it is none.

export type FileText = { text: string } | { is: 'spreadsheet' | 'no-text' };

const LOOKED_AT = 1000;
// Zip, which the spreadsheets of today are, and the compound file of those before 2007.
const SPREADSHEETS = [[0x50, 0x4b, 0x03, 0x04], [0xd0, 0xcf, 0x11, 0xe0]];

export function textOf(bytes: Uint8Array): FileText {
  if (SPREADSHEETS.some((start) => start.every((byte, i) => bytes[i] === byte))) return { is: 'spreadsheet' };
  const wide = wideEncoding(bytes);
  if (wide) return { text: new TextDecoder(wide).decode(bytes) };
  if (bytes.subarray(0, LOOKED_AT).includes(0) || starts(bytes, '%PDF')) return { is: 'no-text' };
  const utf8 = new TextDecoder().decode(bytes);
  return { text: utf8.includes('\uFFFD') ? new TextDecoder('windows-1252').decode(bytes) : utf8 };
}

// Two bytes a character: by its mark, or by the zeros in every other place.
function wideEncoding(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const zeros = [0, 0];
  const some = bytes.subarray(0, LOOKED_AT);
  some.forEach((byte, i) => { if (!byte) zeros[i % 2]!++; });
  const [even = 0, odd = 0] = zeros.map((count) => count / (some.length / 2));
  if (odd > 0.3 && even < 0.05) return 'utf-16le';
  return even > 0.3 && odd < 0.05 ? 'utf-16be' : undefined;
}

function starts(bytes: Uint8Array, text: string): boolean {
  return [...text].every((letter, i) => bytes[i] === letter.charCodeAt(0));
}
