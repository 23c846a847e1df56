/** Tells whether all the words stand in a text that is given in small letters; how the words are written does not matter. */
export function allWords(words: string): (lowerCase: string) => boolean {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  return (lowerCase) => wanted.every((word) => lowerCase.includes(word));
}
