/** What is said of a word that is no unit of length. */
export function noUnit(word: string): string {
  return `“${word}” is no unit: µm, mm, tenths, thou or in`;
}
