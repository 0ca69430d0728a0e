/** Text without what XML 1.0 forbids (2.2, Char): the builder escapes & < > and quotes, but lets these through. */
export function plainText(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: that is what is taken out
  return text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu, '');
}
