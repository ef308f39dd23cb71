/** A Japanese era (nengō): names as letters and as characters, first and last year; the last is also the next one's first. */
export interface JapaneseEra {
  readonly name: string;
  readonly characters: string;
  readonly first: number;
  readonly last: number | 'open';
}

/**
 * The eras found on coins from the unification of the coinage, and the one of the first Japanese coin.
 * Western years as handbooks print them: the year in which the Japanese year began. Until 1872 the year followed the moon
 * and ended in the next January or February.
 */
export const JAPANESE_ERAS: readonly JapaneseEra[] = [
  { name: 'Wado', characters: '和銅', first: 708, last: 715 },
  { name: 'Tensho', characters: '天正', first: 1573, last: 1592 },
  { name: 'Bunroku', characters: '文禄', first: 1592, last: 1596 },
  { name: 'Keicho', characters: '慶長', first: 1596, last: 1615 },
  { name: 'Genna', characters: '元和', first: 1615, last: 1624 },
  { name: 'Kanei', characters: '寛永', first: 1624, last: 1644 },
  { name: 'Shoho', characters: '正保', first: 1644, last: 1648 },
  { name: 'Keian', characters: '慶安', first: 1648, last: 1652 },
  { name: 'Joo', characters: '承応', first: 1652, last: 1655 },
  { name: 'Meireki', characters: '明暦', first: 1655, last: 1658 },
  { name: 'Manji', characters: '万治', first: 1658, last: 1661 },
  { name: 'Kanbun', characters: '寛文', first: 1661, last: 1673 },
  { name: 'Enpo', characters: '延宝', first: 1673, last: 1681 },
  { name: 'Tenna', characters: '天和', first: 1681, last: 1684 },
  { name: 'Jokyo', characters: '貞享', first: 1684, last: 1688 },
  { name: 'Genroku', characters: '元禄', first: 1688, last: 1704 },
  { name: 'Hoei', characters: '宝永', first: 1704, last: 1711 },
  { name: 'Shotoku', characters: '正徳', first: 1711, last: 1716 },
  { name: 'Kyoho', characters: '享保', first: 1716, last: 1736 },
  { name: 'Genbun', characters: '元文', first: 1736, last: 1741 },
  { name: 'Kanpo', characters: '寛保', first: 1741, last: 1744 },
  { name: 'Enkyo', characters: '延享', first: 1744, last: 1748 },
  { name: 'Kanen', characters: '寛延', first: 1748, last: 1751 },
  { name: 'Horeki', characters: '宝暦', first: 1751, last: 1764 },
  { name: 'Meiwa', characters: '明和', first: 1764, last: 1772 },
  { name: 'Anei', characters: '安永', first: 1772, last: 1781 },
  { name: 'Tenmei', characters: '天明', first: 1781, last: 1789 },
  { name: 'Kansei', characters: '寛政', first: 1789, last: 1801 },
  { name: 'Kyowa', characters: '享和', first: 1801, last: 1804 },
  { name: 'Bunka', characters: '文化', first: 1804, last: 1818 },
  { name: 'Bunsei', characters: '文政', first: 1818, last: 1830 },
  { name: 'Tenpo', characters: '天保', first: 1830, last: 1844 },
  { name: 'Koka', characters: '弘化', first: 1844, last: 1848 },
  { name: 'Kaei', characters: '嘉永', first: 1848, last: 1854 },
  { name: 'Ansei', characters: '安政', first: 1854, last: 1860 },
  { name: 'Manen', characters: '万延', first: 1860, last: 1861 },
  { name: 'Bunkyu', characters: '文久', first: 1861, last: 1864 },
  { name: 'Genji', characters: '元治', first: 1864, last: 1865 },
  { name: 'Keio', characters: '慶応', first: 1865, last: 1868 },
  { name: 'Meiji', characters: '明治', first: 1868, last: 1912 },
  { name: 'Taisho', characters: '大正', first: 1912, last: 1926 },
  { name: 'Showa', characters: '昭和', first: 1926, last: 1989 },
  { name: 'Heisei', characters: '平成', first: 1989, last: 2019 },
  { name: 'Reiwa', characters: '令和', first: 2019, last: 'open' },
];

/** The number of years an era has; a new one has as many as are ever asked for. */
export function lengthOfEra(era: JapaneseEra): number {
  return era.last === 'open' ? Number.POSITIVE_INFINITY : era.last - era.first + 1;
}
