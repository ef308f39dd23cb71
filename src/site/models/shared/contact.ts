/** An address that the keeper chose to publish, as it is read and as it is followed. */
export type Contact = { readonly text: string; readonly href: string };

export function contactOf(contact: string | undefined): Contact | null {
  if (contact === undefined) return null;
  const isWeb = /^https?:/.test(contact);
  return {
    text: isWeb ? contact.replace(/^https?:\/\//, '').replace(/\/$/, '') : contact,
    href: isWeb ? contact : `mailto:${contact}`,
  };
}
