/** Splits "id@65" into the unit and another size of it. */
export function splitVariant(id: string | undefined): { unit?: string; inches?: number } {
  if (id === undefined) return {};
  const at = id.indexOf('@');
  return at < 0 ? { unit: id } : { unit: id.slice(0, at), inches: Number(id.slice(at + 1)) };
}
