/**
 * Runs in the page: moves the slider of every element of a tag, or of none, once a frame, and gives the intervals
 * between the frames in milliseconds, and how many tasks of the page took longer than 50 ms.
 */
export function drag(tag, frames) {
  const boards = tag ? [...document.querySelectorAll(tag)] : [];
  const intervals = [];
  const long = [];
  const observer = new PerformanceObserver((list) => long.push(...list.getEntries()));
  observer.observe({ type: 'longtask' });
  return new Promise((resolve) => {
    let last = performance.now();
    function frame(now) {
      intervals.push(now - last);
      last = now;
      const ohms = ((40 + ((intervals.length * 7) % 360)) / 10).toFixed(1);
      for (const board of boards) {
        if (tag === 'rheolet-board') board.move('R1', ohms);
        else board.move(Number(ohms));
      }
      if (intervals.length < frames) requestAnimationFrame(frame);
      else resolve({ intervals: intervals.slice(1), long: long.length + observer.takeRecords().length });
    }
    requestAnimationFrame(frame);
  });
}
