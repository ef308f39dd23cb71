/** The page of the desk on which a file of the cabinet is edited. */
export function linkTo(file: string): string {
  const [kind = '', id = ''] = file.split('/');
  if (kind === 'pieces') return `/pieces/${id}`;
  if (kind === 'cabinet.yaml') return '/lists/cabinet/cabinet';
  if (kind === 'exhibits') return `/exhibits/${id}`;
  if (file === 'private/life.csv') return '/life';
  if (kind === 'types') return `/types/${id}`;
  return kind === 'private' ? '/' : `/lists/${kind}/${id.replace(/\.yaml$/, '')}`;
}
