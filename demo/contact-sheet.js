// Draws all circuits with the symbols that are chosen, and writes above each the line that it is drawn from.
const boards = document.querySelectorAll('rheolet-board');

for (const board of boards) {
  const line = document.createElement('pre');
  line.appendChild(document.createElement('code')).textContent = board.textContent;
  line.tabIndex = 0;
  board.before(line);
}

document.querySelector('fieldset').addEventListener('change', ({ target }) => {
  for (const board of boards) board.setAttribute('symbols', target.value);
});
