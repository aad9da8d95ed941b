/**
 * Runs in a page before all else: holds definitions and idle work back until they are let go, so that each can be
 * measured by itself. Every act ends with the paint of its frame.
 */
export function hold() {
  const define = customElements.define.bind(customElements);
  const definitions = [];
  const idle = [];
  const painted = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  customElements.define = (...definition) => definitions.push(definition);
  globalThis.requestIdleCallback = (work) => idle.push(work);
  globalThis.acts = {
    painted,
    define() {
      for (const definition of definitions.splice(0)) define(...definition);
      return painted();
    },
    idle() {
      while (idle.length > 0) for (const work of idle.splice(0)) work({ timeRemaining: () => 50 });
      return painted();
    },
    mount(tag, attributes, count) {
      const made = Array.from({ length: count }, () => document.createElement(tag));
      for (const element of made) {
        for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
      }
      document.body.append(...made);
      return painted();
    },
    remove() {
      document.body.replaceChildren();
      return painted();
    },
  };
}
