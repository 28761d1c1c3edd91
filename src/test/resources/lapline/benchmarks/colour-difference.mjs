// Times the colour libraries that were installed beside this file on the pairs of a file.
// Prints a line for each: name, version, milliseconds of the quickest of its runs, sum of all differences.
// arguments: file of little-endian doubles (L a b L a b), number of runs
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
const [file, runs] = process.argv.slice(2);
const bytes = readFileSync(file);
const numbers = new Float64Array(bytes.buffer, bytes.byteOffset, bytes.length / 8);

const makers = {
  culori: async () => {
    const { differenceCiede2000 } = await import('culori');
    const difference = differenceCiede2000();
    const colour = (i) => ({ mode: 'lab65', l: numbers[i], a: numbers[i + 1], b: numbers[i + 2] });
    return { colour, difference };
  },
  'colorjs.io': async () => {
    // its difference is taken in this Lab, so nothing has to be converted
    const { deltaE2000, Lab: space } = await import('colorjs.io/fn');
    const colour = (i) => ({ space, coords: [numbers[i], numbers[i + 1], numbers[i + 2]], alpha: 1 });
    return { colour, difference: (x, y) => deltaE2000(x, y) };
  },
};

for (const [name, make] of Object.entries(makers)) {
  try {
    const { colour, difference } = await make();
    const first = [];
    const second = [];
    for (let i = 0; i < numbers.length; i += 6) {
      first.push(colour(i));
      second.push(colour(i + 3));
    }
    let quickest = Infinity;
    let sum = 0;
    for (let run = 0; run < Number(runs); run++) {
      const began = performance.now();
      sum = 0;
      for (let i = 0; i < first.length; i++) sum += difference(first[i], second[i]);
      quickest = Math.min(quickest, performance.now() - began);
    }
    const version = JSON.parse(readFileSync(new URL(`node_modules/${name}/package.json`, import.meta.url))).version;
    console.log([name, version, quickest, sum].join(' '));
  } catch (e) {
    console.error(`${name}: ${e.message}`);
  }
}
