/** A reign or era that years are counted in: names as letters and as characters, first and last year. */
export interface ReignTitle {
  readonly calendar: 'japanese' | 'chinese' | 'korean' | 'vietnamese';
  /** The name, and other ways to write it in letters. */
  readonly names: readonly string[];
  readonly characters: string;
  readonly first: number;
  readonly last: number | 'open';
}

type Row = readonly [names: string, characters: string, first: number, last: number | 'open'];

function titles(calendar: ReignTitle['calendar'], rows: readonly Row[]): readonly ReignTitle[] {
  return rows.map(([names, characters, first, last]) => ({
    calendar,
    names: names.split(', '),
    characters,
    first,
    last,
  }));
}

/**
 * The eras (nengō) found on coins from the unification of the coinage, and the one of the first Japanese coin. The last
 * year is also the first of the next. Western years as handbooks print them: the year in which the Japanese year
 * began. Until 1872 the year followed the moon and ended in the next January or February.
 */
export const JAPANESE_ERAS = titles('japanese', [
  ['Wado', '和銅', 708, 715],
  ['Eiroku', '永禄', 1558, 1570],
  ['Genki', '元亀', 1570, 1573],
  ['Tensho', '天正', 1573, 1592],
  ['Bunroku', '文禄', 1592, 1596],
  ['Keicho', '慶長', 1596, 1615],
  ['Genna', '元和', 1615, 1624],
  ['Kanei', '寛永', 1624, 1644],
  ['Shoho', '正保', 1644, 1648],
  ['Keian', '慶安', 1648, 1652],
  ['Joo', '承応', 1652, 1655],
  ['Meireki', '明暦', 1655, 1658],
  ['Manji', '万治', 1658, 1661],
  ['Kanbun', '寛文', 1661, 1673],
  ['Enpo', '延宝', 1673, 1681],
  ['Tenna', '天和', 1681, 1684],
  ['Jokyo', '貞享', 1684, 1688],
  ['Genroku', '元禄', 1688, 1704],
  ['Hoei', '宝永', 1704, 1711],
  ['Shotoku', '正徳', 1711, 1716],
  ['Kyoho', '享保', 1716, 1736],
  ['Genbun', '元文', 1736, 1741],
  ['Kanpo', '寛保', 1741, 1744],
  ['Enkyo', '延享', 1744, 1748],
  ['Kanen', '寛延', 1748, 1751],
  ['Horeki', '宝暦', 1751, 1764],
  ['Meiwa', '明和', 1764, 1772],
  ['Anei', '安永', 1772, 1781],
  ['Tenmei', '天明', 1781, 1789],
  ['Kansei', '寛政', 1789, 1801],
  ['Kyowa', '享和', 1801, 1804],
  ['Bunka', '文化', 1804, 1818],
  ['Bunsei', '文政', 1818, 1830],
  ['Tenpo', '天保', 1830, 1844],
  ['Koka', '弘化', 1844, 1848],
  ['Kaei', '嘉永', 1848, 1854],
  ['Ansei', '安政', 1854, 1860],
  ['Manen', '万延', 1860, 1861],
  ['Bunkyu', '文久', 1861, 1864],
  ['Genji', '元治', 1864, 1865],
  ['Keio', '慶応', 1865, 1868],
  ['Meiji', '明治', 1868, 1912],
  ['Taisho', '大正', 1912, 1926],
  ['Showa', '昭和', 1926, 1989],
  ['Heisei', '平成', 1989, 2019],
  ['Reiwa', '令和', 2019, 'open'],
]);

/** Reign titles of the Ming and after, whose years go with the calendar year; handbooks of Chinese coins, common practice. */
const CHINESE_TITLES = titles('chinese', [
  ['Hongwu, Hung Wu', '洪武', 1368, 1398],
  ['Jianwen, Chien Wen', '建文', 1399, 1402],
  ['Yongle, Yung Lo', '永樂', 1403, 1424],
  ['Xuande, Hsuan Te', '宣德', 1426, 1435],
  ['Hongzhi, Hung Chih', '弘治', 1488, 1505],
  ['Zhengde, Cheng Te', '正德', 1506, 1521],
  ['Jiajing, Chia Ching', '嘉靖', 1522, 1566],
  ['Longqing, Lung Ching', '隆慶', 1567, 1572],
  ['Wanli, Wan Li', '萬曆', 1573, 1620],
  ['Taichang, Tai Chang', '泰昌', 1620, 1620],
  ['Tianqi, Tien Chi', '天啓', 1621, 1627],
  ['Chongzhen, Chung Chen', '崇禎', 1628, 1644],
  ['Shunzhi, Shun Chih', '順治', 1644, 1661],
  ['Kangxi, Kang Hsi', '康熙', 1662, 1722],
  ['Yongzheng, Yung Cheng', '雍正', 1723, 1735],
  ['Qianlong, Chien Lung', '乾隆', 1736, 1795],
  ['Jiaqing, Chia Ching', '嘉慶', 1796, 1820],
  ['Daoguang, Tao Kuang', '道光', 1821, 1850],
  ['Xianfeng, Hsien Feng', '咸豐', 1851, 1861],
  ['Tongzhi, Tung Chih', '同治', 1862, 1874],
  ['Guangxu, Kuang Hsu', '光緒', 1875, 1908],
  ['Xuantong, Hsuan Tung', '宣統', 1909, 1911],
  ['Hongxian, Hung Hsien', '洪憲', 1916, 1916],
  ['Datong, Ta Tung', '大同', 1932, 1934],
  ['Kangde, Kang Te', '康德', 1934, 1945],
]);

/** Years of the founding of the dynasty and the reigns of the last emperors, on coins from 1888; common practice. */
const KOREAN_TITLES = titles('korean', [
  ['Gaeguk, Kaekuk', '開國', 1392, 1896],
  ['Geonyang, Konyang', '建陽', 1896, 1897],
  ['Gwangmu, Kwangmu', '光武', 1897, 1907],
  ['Yunghui, Yunghi', '隆熙', 1907, 1910],
]);

const VIETNAMESE_TITLES = titles('vietnamese', [
  ['Gia Long', '嘉隆', 1802, 1820],
  ['Minh Mang, Minh Menh', '明命', 1820, 1841],
  ['Thieu Tri', '紹治', 1841, 1848],
  ['Tu Duc', '嗣德', 1848, 1883],
  ['Dong Khanh', '同慶', 1885, 1889],
  ['Thanh Thai', '成泰', 1889, 1907],
  ['Duy Tan', '維新', 1907, 1916],
  ['Khai Dinh', '啓定', 1916, 1926],
  ['Bao Dai', '保大', 1926, 1945],
]);

export const REIGN_TITLES: readonly ReignTitle[] = [
  ...JAPANESE_ERAS,
  ...CHINESE_TITLES,
  ...KOREAN_TITLES,
  ...VIETNAMESE_TITLES,
];

/** The number of years counted in a reign or era; a new one has as many as are ever asked for. */
export function lengthOfTitle({ first, last }: ReignTitle): number {
  return last === 'open' ? Number.POSITIVE_INFINITY : last - first + 1;
}

/** Older forms of characters beside the plain ones that stand above: 慶應 is 慶応, 寶永 is 宝永. */
const OLDER = '應寶寳祿寬萬曆德暦圓龜亙廣國啟樂';
const PLAIN = '応宝宝禄寛万暦徳暦円亀亘広国啓楽';

/** The characters of a title in one form, whichever was written. */
export function plainCharacters(text: string): string {
  return text.replace(/\p{Script=Han}/gu, (sign) => PLAIN[OLDER.indexOf(sign)] ?? sign);
}
