import { expect, test } from 'vitest';
import { cabinetSchema } from '../../../../src/catalogue/schema/cabinet.ts';
import { contactOf } from '../../../../src/site/models/shared/contact.ts';

const read = (contact: string) => cabinetSchema.safeParse({ title: 'A cabinet', keeper: 'A. N. Other', contact });

// A mail address is linked as RFC 6068 has it, a page of the web by its address.
test.for([
  ['cabinet@example.org', 'cabinet@example.org', 'mailto:cabinet@example.org'],
  ['https://example.org/contact/', 'example.org/contact', 'https://example.org/contact/'],
])('%s can be written to', ([contact = '', text, href]) => {
  expect(read(contact).success).toBe(true);
  expect(contactOf(contact)).toEqual({ text, href });
});

test.for(['12 Fossgate, York', 'cabinet', 'cabinet@example', 'javascript:alert(1)', 'a <b@example.org>'])(
  '%s is refused',
  (contact) => {
    expect(read(contact).success).toBe(false);
  },
);

test('without one nothing is shown', () => expect(contactOf(undefined)).toBeNull());
