// Writes each example's own line above it: it is typed once, so what is read and pasted is what runs.
for (const figure of document.querySelectorAll('figure')) {
  const line = document.createElement('pre');
  const code = line.appendChild(document.createElement('code'));
  code.textContent = [...figure.children]
    .filter(({ localName }) => localName !== 'figcaption')
    .map(({ outerHTML }) => outerHTML.replaceAll('=""', '').replace(/\s*\n\s*/g, ' '))
    .join('\n');
  line.tabIndex = 0;
  figure.querySelector('figcaption').after(line);
}
