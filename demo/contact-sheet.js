// Draws all circuits with the symbols that are chosen, and writes above each the line that it is drawn from, with what stands written in it.
const boards = document.querySelectorAll('rheolet-board');

for (const board of boards) {
  const line = document.createElement('pre');
  const quantities = board.getAttribute('quantities');
  const written = quantities ? `\nquantities="${quantities}"` : '';
  line.appendChild(document.createElement('code')).textContent = board.textContent + written;
  line.tabIndex = 0;
  board.before(line);
}

document.querySelector('fieldset').addEventListener('change', ({ target }) => {
  for (const board of boards) board.setAttribute('symbols', target.value);
});
