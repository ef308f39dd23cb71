/**
 * Formats a workbook names by number alone (ECMA-376 part 1, 18.8.30). Those that each country fills in its own way are
 * given as it is safe to show them: days as ISO writes them, sums without a sign.
 */
const BUILT_IN: Readonly<Record<number, string>> = {
  0: 'General', 1: '0', 2: '0.00', 3: '#,##0', 4: '#,##0.00', 5: '#,##0', 6: '#,##0', 7: '#,##0.00', 8: '#,##0.00', 9: '0%',
  10: '0.00%', 11: '0.00E+00', 12: '# ?/?', 13: '# ??/??', 14: 'yyyy-mm-dd', 15: 'd-mmm-yy', 16: 'd-mmm', 17: 'mmm-yy',
  18: 'h:mm AM/PM', 19: 'h:mm:ss AM/PM', 20: 'h:mm', 21: 'h:mm:ss', 22: 'yyyy-mm-dd h:mm', 37: '#,##0;(#,##0)',
  38: '#,##0;(#,##0)', 39: '#,##0.00;(#,##0.00)', 40: '#,##0.00;(#,##0.00)', 41: '#,##0', 42: '#,##0', 43: '#,##0.00',
  44: '#,##0.00', 45: 'mm:ss', 46: '[h]:mm:ss', 47: 'mm:ss.0', 48: '##0.0E+0', 49: '@',
}; // prettier-ignore

export function builtInFormat(id: number): string {
  if ((id >= 27 && id <= 36) || (id >= 50 && id <= 58)) return 'yyyy-mm-dd';
  return BUILT_IN[id] ?? 'General';
}
