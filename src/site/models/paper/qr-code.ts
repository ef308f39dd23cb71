import qrcode from 'qrcode-generator';

/** A QR code (ISO/IEC 18004, error correction M) as a path of unit squares, with its quiet zone of four modules. */
export type QrCode = { readonly modules: number; readonly path: string };

const QUIET = 4;

export function qrCode(text: string): QrCode {
  const code = qrcode(0, 'M');
  code.addData(text);
  code.make();
  const count = code.getModuleCount();
  const rows = Array.from({ length: count }, (_, row) => {
    const dark = Array.from({ length: count }, (__, column) => code.isDark(row, column));
    return dark.flatMap((is, column) => {
      if (!is || dark[column - 1] === true) return [];
      const end = dark.indexOf(false, column);
      return [`M${column + QUIET} ${row + QUIET}h${(end === -1 ? count : end) - column}v1H${column + QUIET}z`];
    });
  });
  return { modules: count + 2 * QUIET, path: rows.flat().join('') };
}
