// Why the layouts stand in the order in which they do, told from what was computed.
import { show, type UnitSystem } from 'loamloop/report';
import type { Flow } from 'loamloop/units';
import type { Compared } from './compared.js';
import { explained, runFraction } from './explained.js';
import { fills, leastBendRadius, pipe, soil, sourceFlow } from './house.js';
import { earthOf, title } from './tables.js';

/** The row with the most of something; with the least of it for its negative. */
export const most = (rows: readonly Compared[], of: (row: Compared) => number): Compared =>
  rows.reduce((best, row) => (of(row) > of(best) ? row : best));

/** Pairs of rows of which the one with more of something needs more pipe, and all pairs that differ in it. */
export function concordance(rows: readonly Compared[], of: (row: Compared) => number): { readonly alike: number; readonly pairs: number } {
  const pairs = rows.flatMap((row, index) => rows.slice(index + 1).map((other) => (of(row) - of(other)) * (row.needed - other.needed)));
  return { alike: pairs.filter((each) => each > 0).length, pairs: pairs.filter((each) => each !== 0).length };
}

const percent = (share: number): string => `${(100 * share).toFixed(Math.abs(share) < 0.01 ? 1 : 0)} %`;
const moreOrLess = (factor: number): string => (factor >= 1 ? `${percent(factor - 1)} more` : `${percent(1 - factor)} less`);

/** What each of the tables' columns is best for. */
export function inShort(rows: readonly Compared[], system: UnitSystem): readonly string[] {
  const write = show(system);
  const name = ({ kind }: Compared): string => title(system, kind);
  const least = (of: (row: Compared) => number): Compared => most(rows, (row) => -of(row));
  const [pipeRow, trenchRow] = [least(({ needed }) => needed), least(({ trench }) => trench)];
  const [landRow, earthRow] = [least(({ land }) => land), least(({ earth }) => earth)];
  return [
    `Least pipe: ${name(pipeRow)}, ${write('pipe length', pipeRow.needed)} in ${write('trench length', pipeRow.trench)} of trench on ${write('area', pipeRow.land)}.`,
    `Least trench: ${name(trenchRow)}, ${write('trench length', trenchRow.trench)} for ${write('pipe length', trenchRow.needed)} of pipe.`,
    `Least land: ${name(landRow)}, ${write('area', landRow.land)}, with ${earthOf(system, landRow.earth)} of earth to move.`,
    `Least earth: ${name(earthRow)}, ${earthOf(system, earthRow.earth)} in a narrow cut, with ${write('pipe length', earthRow.needed)} of pipe.`,
  ];
}

/** One sentence or two for every cause. */
export function reasons(rows: readonly Compared[], system: UnitSystem): readonly string[] {
  const write = show(system);
  const name = ({ kind }: Compared): string => title(system, kind);
  const named = (wanted: string): Compared => rows.find(({ kind }) => kind.name === wanted) ?? rows[0] ?? none();
  const coils = (wanted: string): readonly Compared[] => rows.filter(({ kind }) => kind.name === wanted).sort((a, b) => a.needed - b.needed);
  const byNeighbours = (row: Compared): number => row.makings.byNeighbours;
  const [lonely, crowded] = [most(rows, (row) => -byNeighbours(row)), most(rows, byNeighbours)];
  const { alike, pairs } = concordance(rows, byNeighbours);

  const [deep, unequal] = [named('one pipe'), named('unequal trenches')];
  const [beside, over] = [named('two side by side'), named('two stacked')];
  const stacked = explained(over, beside);
  const cold = (row: Compared): string => write('temperature', row.makings.coldestGround);

  const six = named('six pipes');
  const [wide, tight] = coils('flat coil');
  const [open, shut] = [most(rows, ({ makings }) => -makings.bySurface), most(rows, ({ makings }) => makings.bySurface)];
  const bent = rows.filter(({ kind }) => kind.bendRadius < leastBendRadius);
  const tightest = most(bent, ({ kind }) => -kind.bendRadius);
  const ends = explained(named('out and back'), beside);
  const manyCircuits = most(rows, (row) => row.coils);
  const share = (row: Compared): Flow => (sourceFlow / row.coils) as Flow;

  const own = ({ makings }: Compared): string => write('pipe resistance', makings.wallAndFilm + makings.circuitEnds);

  const gain = ({ settled }: Compared): number => settled.withIce - settled.withoutIce;
  const [iciest, leastIce] = [most(rows, gain), most(rows, (row) => -gain(row))];
  const saved = ({ needed, neededIced }: Compared): number => 1 - neededIced / needed;
  const [mostSaved, leastSaved] = [most(rows, saved), most(rows, (row) => -saved(row))];
  const loss = ({ settled, firstWinter }: Compared): number => settled.withoutIce - firstWinter.withoutIce;
  const [loosest, firmest] = [most(rows, loss), most(rows, (row) => -loss(row))];
  const loose = ({ needed, neededLoose }: Compared): number => neededLoose / needed;
  const [firmer, looser] = [most(rows, (row) => -loose(row)), most(rows, loose)];
  const extra = (row: Compared): string => percent(loose(row) - 1);
  const off = Math.max(...rows.map((row) => Math.abs(Math.log(explained(row, deep).together / explained(row, deep).hourByHour))));

  return [
    `Neighbours. A metre of pipe draws on ground that the next pipe draws on, too. For the same heat the wall of ${name(lonely)} falls ${percent(
      byNeighbours(lonely) - 1,
    )} further in a season than that of a pipe alone, of ${name(crowded)} ${percent(byNeighbours(crowded) - 1)}. This makes the order: of ${String(
      pairs,
    )} pairs of layouts the one with the nearer neighbours needs the more pipe in ${String(alike)}.`,
    `Depth. Without a loop the ground falls to ${cold(deep)} at ${name(deep)}, and to ${cold(unequal)} on the mean of ${name(
      unequal,
    )}, whose pipe lies ${write('length', unequal.makings.meanDepth)} deep on the mean rather than ${write('length', deep.makings.meanDepth)}: ${moreOrLess(
      unequal.needed / deep.needed,
    )} pipe. ${capital(name(over))} resists ${moreOrLess(
      stacked.byResistance,
    )} than ${name(beside)}, but its ground is ${stacked.byGround > 1 ? 'colder' : 'warmer'}: ${moreOrLess(stacked.hourByHour)} pipe.`,
    `Pipe in a trench. ${capital(name(six))} take ${moreOrLess(six.needed / deep.needed)} pipe than ${name(deep)}, and ${moreOrLess(
      six.trench / deep.trench,
    )} trench.${
      wide && tight
        ? ` With ${write('length', tight.kind.pitch ?? 0)} from ring to ring rather than ${write('length', wide.kind.pitch ?? 0)}, a flat coil takes ${moreOrLess(
            tight.needed / wide.needed,
          )} pipe and ${moreOrLess(tight.trench / wide.trench)} trench: past some pitch, more pipe only draws on the same ground.`
        : ''
    }`,
    `Surface. Heat comes from above. Below a surface that lets none through the wall would fall ${moreOrLess(open.makings.bySurface)} in a season in ${name(
      open,
    )}, and ${moreOrLess(shut.makings.bySurface)} in ${name(shut)}: build over neither, least of all over the latter.`,
    `Bends. Bent from straight, this pipe wants a radius of ${write('length', leastBendRadius)}. ${String(bent.length)} layouts turn tighter, ${name(
      tightest,
    )} to ${write('length', tightest.kind.bendRadius)}: widen the end of the trench or turn with fittings, lay rings from the set of the coil, in warm weather; the maker's limit goes first.`,
    `Circuits. Out and back in one trench takes ${moreOrLess(ends.hourByHour)} pipe than two side by side that flow alike, since the warm way warms the cold one. ${capital(
      name(manyCircuits),
    )} shares the flow among ${String(manyCircuits.coils)} circuits, ${write('flow', share(manyCircuits))} in each: hard to flush, and wall, film and ends of the circuits resist ${own(manyCircuits)}, in ${name(deep)} ${own(deep)}.`,
    `Ice. It keeps the fluid ${write('temperature difference', gain(leastIce))} warmer in ${name(leastIce)} and ${write(
      'temperature difference',
      gain(iciest),
    )} in ${name(iciest)}. Trusted to, it would save ${percent(saved(leastSaved))} of the pipe in ${name(leastSaved)} and ${percent(
      saved(mostSaved),
    )} in ${name(mostSaved)}; left alone it is the reserve.`,
    `Fill. The ground conducts ${write('conductivity', soil.conductivity)}, its fill ${write(
      'conductivity',
      fills.firstWinter.conductivity,
    )} in the first winter and ${write('conductivity', fills.settled.conductivity)} when it has settled. The first winter is colder by ${write(
      'temperature difference',
      loss(firmest),
    )} in ${name(firmest)} to ${write('temperature difference', loss(loosest))} in ${name(loosest)}; to keep the limit then, too, takes ${extra(firmer)} to ${extra(looser)} more pipe.`,
    `The handbook's form, (wall + fill + ${runFraction.toFixed(2)} · ground)/(ground − fluid), gives these lengths beside one another to ${percent(
      Math.exp(off) - 1,
    )}; the last four columns above are it. Pipe of ${write('diameter', pipe.outsideDiameter)}.`,
  ];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function none(): never {
  throw new Error('no layouts');
}
