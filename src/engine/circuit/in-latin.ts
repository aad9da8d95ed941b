/** What the capitals from the Greek Α and from the Cyrillic А on look like; a dash for those that look like no Latin one. */
const [greek, cyrillic] = ['AB--EZH-IK-MN-O-P--TY-X', 'A-B--E----K-MHO-PCT--X'];

/** A text with the usual signs in place of those that look like them: wide ones, small and raised ones, capitals of other alphabets. */
export const inLatin = (text: string): string =>
  text.normalize('NFKC').replace(/[\u0391-\u03a7\u0410-\u0425]/g, (letter) => {
    const code = letter.charCodeAt(0);
    return (code < 0x400 ? greek.charAt(code - 0x391) : cyrillic.charAt(code - 0x410)).replace('-', letter);
  });
