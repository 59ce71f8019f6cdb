const vulgarFractions = /[\u00bc-\u00be\u2150-\u215e\u2189]/g;

/**
 * Length text in lower case with every look-alike sign made plain: primes and curly quotes to ' and ", dashes to -,
 * ¾ to ` 3/4`, every kind of space to a blank.
 */
export function plainLengthText(text: string): string {
  return text
    .replace(vulgarFractions, (sign) => ` ${sign.normalize('NFKC')}`)
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[\u2032\u2018\u2019\u00b4\u02b9`]/g, "'")
    .replace(/[\u2033\u201c\u201d\u02ba]|''/g, '"')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}
