/** Regnal years of English kings: first and last day as C. R. Cheney, A Handbook of Dates, prints them; from memory. */
export const REGNAL_YEARS: readonly {
  readonly ruler: string;
  readonly from: string;
  readonly to: string;
  readonly year: number;
  readonly first: string;
  readonly last: string;
}[] = [
  { ruler: 'Edward I', from: '1272-11-20', to: '1307-07-07', year: 1, first: '1272-11-20', last: '1273-11-19' },
  { ruler: 'Edward I', from: '1272-11-20', to: '1307-07-07', year: 7, first: '1278-11-20', last: '1279-11-19' },
  { ruler: 'Edward I', from: '1272-11-20', to: '1307-07-07', year: 35, first: '1306-11-20', last: '1307-07-07' },
  { ruler: 'Edward II', from: '1307-07-08', to: '1327-01-20', year: 20, first: '1326-07-08', last: '1327-01-20' },
  { ruler: 'Edward III', from: '1327-01-25', to: '1377-06-21', year: 25, first: '1351-01-25', last: '1352-01-24' },
  { ruler: 'Richard II', from: '1377-06-22', to: '1399-09-29', year: 23, first: '1399-06-22', last: '1399-09-29' },
  { ruler: 'Henry VIII', from: '1509-04-22', to: '1547-01-28', year: 18, first: '1526-04-22', last: '1527-04-21' },
  { ruler: 'Henry VIII', from: '1509-04-22', to: '1547-01-28', year: 38, first: '1546-04-22', last: '1547-01-28' },
];
