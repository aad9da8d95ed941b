/** The parts of a manifest's element that a page may use. */
const sections = ['attributes', 'members', 'events', 'slots', 'cssParts', 'cssProperties'];
const names = (element, section) => (element[section] ?? []).map(({ name }) => name);

/** What the manifest of an element has without a description, or twice; as "section: name". */
export function undescribed(element) {
  const items = sections.flatMap((section) => (element[section] ?? []).map((item) => ({ section, ...item })));
  const bare = items.filter(({ description }) => !description);
  const twice = items.filter(
    ({ section, name }, place) =>
      section !== 'members' && // two accessors may have one name
      items.findIndex((item) => item.section === section && item.name === name) < place,
  );
  return [
    ...(element.description ? [] : ['the element itself']),
    ...[...bare, ...twice].map(({ section, name }) => `${section}: ${name || 'the default'}`),
  ];
}

/** How the sources name what belongs into each section. */
const patterns = {
  cssParts: /\spart="([\w\s-]+)"/g,
  slots: /<slot name="([\w-]+)"/g,
  cssProperties: /var\((--rheolet-[\w-]+)/g,
  events: /(?:fire\([^'"]*|CustomEvent\()['"](rheolet-[\w-]+)['"]/g,
};

/** What the source of an element uses and its manifest does not have; as "section: name". */
export function unlisted(element, source) {
  return Object.entries(patterns).flatMap(([section, pattern]) => {
    const used = new Set([...source.matchAll(pattern)].flatMap(([, list]) => list.split(/\s+/)));
    return [...used]
      .filter((name) => !names(element, section).includes(name))
      .map((name) => `${section}: ${name}`);
  });
}
