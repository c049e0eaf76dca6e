/**
 * Runs inside the page that is measured. A sweep drives each lead slider some steps out and back,
 * as a hand does, and times every event from the input event to a laid-out page. A recording holds
 * every write that a sweep makes to the document; a bare copy of the document replays them. The
 * replay is what the browser alone costs: no geometry, no measuring, no framework.
 *
 * Nodes are named by the order in which they were first met, the same order in page and copy.
 */
(() => {
  const STEPS = 12;
  const WATCHED = { subtree: true, childList: true, attributes: true, characterData: true };

  const sliders = () =>
    [...document.querySelectorAll('input[type=range]')].slice(0, 4).filter((s) => !s.disabled);

  /** The events of one sweep: [slider, value], each slider ending where it began. */
  function sweep() {
    return sliders().flatMap((slider) => {
      const start = slider.valueAsNumber;
      const [least, most] = [Number(slider.min), Number(slider.max)];
      const step = ((most - least) / 200) * (start + (most - least) * 0.1 > most ? -1 : 1);
      const out = Array.from({ length: STEPS }, (_, i) => start + step * (i + 1));
      return [...out, ...out.slice(0, -1).reverse(), start].map((value) => [slider, value]);
    });
  }

  /** Everything the framework does for an event is done in microtasks; wait them all out. */
  const settled = async () => {
    for (let i = 0; i < 8; i++) await null;
  };
  const layOut = () => document.documentElement.offsetHeight;

  /** One event, the same on either page: the hand moves the thumb and says so, and the page answers. */
  async function drive([slider, value], answer) {
    slider.valueAsNumber = value;
    slider.dispatchEvent(new Event('input', { bubbles: true }));
    // The page answers what it hears; the copy hears nothing and is told.
    answer?.();
    await settled();
    layOut();
  }

  /** Until what was laid out is painted too: the pace of a hand, which a browser hears once a frame. */
  const painted = () =>
    new Promise((done) =>
      requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done))),
    );

  /** Times events; `paced` lets each be painted before the next. */
  async function timeEach(events, paced) {
    const times = [];
    for (const { event, answer } of events) {
      const start = performance.now();
      await drive(event, answer);
      times.push(performance.now() - start);
      if (paced) await painted();
    }
    return times;
  }
  const timeSweep = (paced = false) =>
    timeEach(
      sweep().map((event) => ({ event })),
      paced,
    );

  const plain = (node, meet) => {
    meet(node);
    if (node.nodeType !== Node.ELEMENT_NODE) return [node.nodeName, node.data];
    const attributes = [...node.attributes].map(({ name, value }) => [name, value]);
    const children = [...node.childNodes].map((child) => plain(child, meet));
    return [node.localName, node.namespaceURI, attributes, children, node.value];
  };

  /** Drives one sweep and gives its writes, and the page before it as plain data. */
  async function record() {
    const numbers = new WeakMap();
    let count = 0;
    const meet = (node) => numbers.set(node, count++);
    const page = plain(document.body, meet);
    const fields = () => [...document.querySelectorAll('input, select')];
    const values = new Map(fields().map((field) => [field, field.value]));
    // Delivered as a microtask, so they are all here once the event has settled.
    const changes = [];
    const observer = new MutationObserver((records) => changes.push(...records));
    observer.observe(document.body, WATCHED);

    const events = [];
    for (const event of sweep()) {
      await drive(event);
      // Where the hand has put the thumb; what the page makes of it is a write.
      const [slider, asked] = event;
      values.set(slider, String(asked));
      const writes = changes.splice(0).flatMap((change) => {
        const { type, target, attributeName: name } = change;
        const node = numbers.get(target);
        if (node === undefined) return [];
        if (type === 'attributes')
          return [{ do: 'attribute', node, name, value: target.getAttribute(name) }];
        if (type === 'characterData') return [{ do: 'text', node, value: target.data }];
        const removed = [...change.removedNodes].flatMap((gone) =>
          numbers.has(gone) ? [{ do: 'remove', node: numbers.get(gone) }] : [],
        );
        const before = numbers.get(change.nextSibling) ?? null;
        const inserted = [...change.addedNodes].map((added) =>
          numbers.has(added)
            ? { do: 'move', node: numbers.get(added), parent: node, before }
            : { do: 'insert', parent: node, before, tree: plain(added, meet) },
        );
        return [...removed, ...inserted];
      });
      for (const field of fields())
        if (values.get(field) !== field.value && numbers.has(field)) {
          values.set(field, field.value);
          writes.push({ do: 'value', node: numbers.get(field), value: field.value });
        }
      events.push({ slider: numbers.get(slider), asked, writes });
    }
    observer.disconnect();
    return {
      page,
      root: [...document.documentElement.attributes].map(({ name, value }) => [name, value]),
      styles: [...document.styleSheets].map(({ href }) => href).filter((href) => href !== null),
      events,
      text: document.body.innerText,
    };
  }

  const nodes = [];
  function rebuild([name, space, attributes, children, value]) {
    if (name === '#text' || name === '#comment') {
      const node =
        name === '#text' ? document.createTextNode(space) : document.createComment(space);
      nodes.push(node);
      return node;
    }
    const node = document.createElementNS(space, name);
    nodes.push(node);
    for (const [key, text] of attributes) node.setAttribute(key, text);
    for (const child of children)
      if (child[0] !== 'script') node.append(rebuild(child));
      else skip(child);
    if (value !== undefined && 'value' in node) node.value = value;
    return node;
  }
  /** Keeps the numbering in step over a node that the copy leaves out. */
  function skip(tree) {
    nodes.push(null);
    if (Array.isArray(tree[3])) tree[3].forEach(skip);
  }

  /** Makes this blank document a copy of the recorded one. */
  function become({ page, root }) {
    for (const [name, value] of root) document.documentElement.setAttribute(name, value);
    nodes.length = 0;
    document.body.replaceWith(rebuild(page));
    layOut();
  }

  const perform = {
    attribute: ({ node, name, value }) =>
      value === null ? nodes[node].removeAttribute(name) : nodes[node].setAttribute(name, value),
    text: ({ node, value }) => (nodes[node].data = value),
    value: ({ node, value }) => (nodes[node].value = value),
    remove: ({ node }) => nodes[node].remove(),
    move: ({ node, parent, before }) =>
      nodes[parent].insertBefore(nodes[node], before === null ? null : nodes[before]),
    insert: ({ parent, before, tree }) =>
      nodes[parent].insertBefore(rebuild(tree), before === null ? null : nodes[before]),
  };

  /** Replays a recording once; the copy must stand as the recorded page stood before it. */
  const timeReplay = ({ events }, paced = false) =>
    timeEach(
      events.map(({ slider, asked, writes }) => ({
        event: [nodes[slider], asked],
        answer: () => {
          for (const write of writes) perform[write.do](write);
        },
      })),
      paced,
    );

  window.sweepBench = { timeSweep, record, become, timeReplay };
})();
