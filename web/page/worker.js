// @ts-check
// The program in a worker: opens it on the browser's storage and makes one call after the other.
//
// The page sends { id, do, … } and gets { id, … } back. What goes wrong inside the program comes
// back as `crashed`; the page then ends this worker and starts another. What could not be loaded
// comes back as `missing`.

/** @type {any} */
let module = null;
/** @type {any} */
let program = null;

// `pages.mjs` names the folder of the program that prints by its content.
/** @type {Record<string, string>} */
const FOLDERS = { program: 'program', whole: '%WHOLE%' };

const SHARED = { went: 0, cancelled: 1, cannot: 2 };

/** Loads the program: `program`, or `whole` for printing. */
async function load(/** @type {string} */ name) {
  const at = new URL(`${FOLDERS[name]}/program.js`, self.location.href).href;
  module = await import(at);
  await module.default({ module_or_path: new URL('program_bg.wasm', at) });
}

/** @type {Record<string, (asked: any) => Promise<object>>} */
const DOES = {
  async open({ name, shares, student }) {
    try {
      await load(name);
    } catch (error) {
      return { missing: String(error) };
    }
    if (student) await module.show_student('sample', new Uint8Array(student));
    program = await module.Program.open(shares, FOLDERS.whole.startsWith('whole-'));
    return {};
  },

  async call({ name, args, given, shared, place }) {
    await module.make_room();
    program.saves_to(place);
    if (given) program.give(given.name, new Uint8Array(given.bytes));
    else if (given === null) program.give_none();
    if (shared) program.shared(SHARED[/** @type {'went'} */ (shared)]);
    const answer = program.call(name, args);
    return { answer, files: program.take_files() };
  },

  async file({ name, bytes }) {
    program.open_file(name, new Uint8Array(bytes));
    return {};
  },
};

/** The call before, so that they come one after the other. */
let before = Promise.resolve();

self.onmessage = ({ data }) => {
  before = before.then(async () => {
    const { id } = data;
    try {
      self.postMessage({ id, ...(await DOES[data.do](data)) });
    } catch (error) {
      // The program throws its errors as JSON; anything else is a fault.
      const failed = typeof error === 'string' ? error : null;
      self.postMessage(failed ? { id, failed } : { id, crashed: String(error) });
    }
  });
};
