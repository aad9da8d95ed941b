// The few commands of the W3C's WebDriver protocol (https://www.w3.org/TR/webdriver2/) that the tests need.

/** The code points of keys that have no character (WebDriver, section 17.4.2 "Keyboard actions"). */
const keys = {
  ...{ Tab: '\uE004', Enter: '\uE007', Shift: '\uE008', Escape: '\uE00C', Space: ' ' },
  ...{ End: '\uE010', Home: '\uE011', PageUp: '\uE00E', PageDown: '\uE00F', Backspace: '\uE003' },
  ...{ ArrowLeft: '\uE012', ArrowUp: '\uE013', ArrowRight: '\uE014', ArrowDown: '\uE015' },
};

/** Sends one command; what the driver refuses is an error with its words. */
export async function send(url, method, body) {
  const response = await fetch(url, { method, ...(body && { body: JSON.stringify(body) }) });
  const { value } = await response.json();
  if (!response.ok) throw new Error(value.message || value.error);
  return value;
}

/** The actions that press and release keys, one after the other. */
export function pressing(names) {
  const strokes = names
    .map((name) => keys[name] ?? name)
    .flatMap((value) => ['keyDown', 'keyUp'].map((type) => ({ type, value })));
  return [{ type: 'key', id: 'keyboard', actions: strokes }];
}

/** The actions of one mouse. */
export function mouse(...actions) {
  return [{ type: 'pointer', id: 'mouse', parameters: { pointerType: 'mouse' }, actions }];
}
