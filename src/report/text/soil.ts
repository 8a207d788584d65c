import type { SoilFindingValues } from '../../findings/soil.js';
import type { FindingTexts } from './finding-texts.js';
import { soilIdentificationTexts } from './soil-identification.js';

/** Where an error comes from, and what to measure next to be rid of it. */
const ERROR_CAUSES: Readonly<Record<SoilFindingValues['conductivity-error-mostly-by']['cause'], { readonly from: string; readonly advice: string }>> =
  {
    model: { from: 'the models themselves', advice: 'Only a probe in the ground or a core in a laboratory would tell more.' },
    texture: { from: 'the texture', advice: 'A laboratory with a sieve and sedimentation would settle it; a jar helps.' },
    quartz: { from: 'the quartz in the grains', advice: 'Have the quartz measured, or the conductivity itself with a probe.' },
    density: { from: 'the density', advice: 'Push a core, or dig a small hole and fill it with sand or water.' },
    moisture: { from: 'the moisture', advice: 'Seal a sample, weigh it, dry it in the oven and weigh it again, at several places.' },
    season: { from: 'the season', advice: 'Sample again at the end of the dry season.' },
    place: { from: 'one place against the next', advice: 'Sample at three places or more.' },
    measurement: { from: 'the measurement itself', advice: 'Read with another probe or by another method, and at another time of the year.' },
  };

/** Texts of the findings of the soil room. */
export const soilFindingTexts: FindingTexts<SoilFindingValues> = {
  ...soilIdentificationTexts,
  'water-beyond-pores': ({ saturation }, show) =>
    `Density and moisture together fill ${show('fraction', saturation)} of the pores. Small errors of weighing and volume explain that; ` +
    `the soil is reckoned as saturated. Check the volume of the core and whether the density is the dry one.`,
  'soil-near-saturation': ({ saturation }, show) =>
    `${show('fraction', saturation)} of the pores hold water. Saturated soil carries heat well, but it may stand below a water table that falls in ` +
    `summer, and the trench may fill and slump while it is open.`,
  'soil-very-dry': ({ saturation, moisture }, show) =>
    `With ${show('moisture on dry basis', moisture)} of water only ${show('fraction', saturation)} of the pores are filled: dry for soil at pipe depth. ` +
    `Models read low there. Was the sample kept sealed, and taken at the depth of the pipe?`,
  'moisture-of-organic-soil': ({ moisture, usual }, show) =>
    `Water of ${show('moisture on dry basis', moisture)} on dry basis is more than mineral soil usually holds (${show('moisture on dry basis', usual)}). ` +
    `Look for peat or organic matter, or a very soft clay; if so, the mineral models do not hold.`,
  'sand-may-dry-out-in-cooling': ({ moisture, least }, show) =>
    `Clean sand with ${show('moisture on dry basis', moisture)} of water may dry out around pipes that reject heat; from about ` +
    `${show('moisture on dry basis', least)} on that is no longer to be feared. Count on the dry season, or bed the pipes in finer soil.`,
  'disturbed-sample-density': ({ given, used, standardError }, show) =>
    `The density of ${show('density', given)} comes from disturbed soil, which does not tell how the ground lies. ${show('density', used)}, typical of ` +
    `the texture, is used instead and may be off by ${show('fraction', standardError)} and more. A pushed core or an intact clod would settle it.`,
  'density-not-measured': ({ used, standardError }, show) =>
    `No density was measured. ${show('density', used)} is typical of the texture and may be off by ${show('fraction', standardError)} and more.`,
  'density-outside-texture': ({ dryDensity, low, high }, show) =>
    `A dry density of ${show('density', dryDensity)} is unusual for this texture (${show('density', low)} to ${show('density', high)}). ` +
    (dryDensity < low ? 'Was the sample loose, or its volume over-read?' : 'Was the moist density given, or its volume under-read?'),
  'density-limited-by-moisture': ({ typical, used, moisture }, show) =>
    `At ${show('density', typical)}, typical of the texture, the soil could not hold the ${show('moisture on dry basis', moisture)} of water that was ` +
    `measured. It is taken as saturated at ${show('density', used)}; measure its density.`,
  'density-beyond-usual': ({ dryDensity, low, high }, show) =>
    `A dry density of ${show('density', dryDensity)} is beyond what mineral soil usually has (${show('density', low)} to ${show('density', high)}). ` +
    (dryDensity < low
      ? 'Is it peat or organic soil, a loose heap, or a number in another unit?'
      : 'Is it the moist density, a sample with stones, or a volume under-read?'),
  'density-measured-poorly': ({ standardError, typicalError }, show) =>
    `The measured density may be off by ${show('fraction', standardError)}; by the texture alone it is known to ${show('fraction', typicalError)}, ` +
    `which is what counts then. A larger sample or finer weighing would make the measurement worth having.`,
  'dried-in-air': ({ moisture, added }, show) =>
    `Soil dried in air is not dry. What it still held, ${show('moisture on dry basis', added)}, was added, which makes ` +
    `${show('moisture on dry basis', moisture)}; lumps left in a room for two days held several times that. Dry a part in the oven.`,
  'moisture-weighed-poorly': ({ moistureError, solidsMass, enough }, show) =>
    `With ${show('mass', solidsMass)} of dry soil the balance leaves the water content open by ${show('moisture on dry basis', moistureError)} either way. ` +
    `Dry ${show('mass', enough)} or more, or use a finer balance.`,
  'sample-small-for-its-grains': ({ soilMass, leastMass, largestParticle }, show) =>
    `${show('mass', soilMass)} of soil with particles up to ${show('diameter', largestParticle)} is little: one stone more or less changes the water ` +
    `content. Dry ${show('mass', leastMass)} or more, or take the stones out and tell their share.`,
  'mass-not-constant': ({ lostShare, lostLimit }, show) =>
    `Between the last two weighings the sample lost ${show('ratio', 100 * lostShare)} % of its dry mass; below ${show('ratio', 100 * lostLimit)} % after an ` +
    `hour or more it counts as dry. Put it back into the oven, or the water content comes out too low.`,
  'mass-gained-in-drying': ({ gainedShare }, show) =>
    `The sample gained ${show('ratio', 100 * gainedShare)} % of its dry mass between the last two weighings. Was it weighed hot, or did it cool uncovered ` +
    `and take up water from the air?`,
  'drying-time-short': ({ ovenTime, usualTime }, show) =>
    `${show('time', ovenTime)} in the oven is less than the ${show('time', usualTime)} that drying usually takes; only weighings that no longer change ` +
    `tell that it was enough.`,
  'organic-outside-models': ({ organicMatter, limit }, show) =>
    `${show('mass fraction', organicMatter)} of organic matter is beyond the ${show('mass fraction', limit)} up to which models of mineral soil hold. ` +
    `Have the conductivity measured.`,
  'peat-ground': ({ conductivity }, show) =>
    `Peat conducts poorly (${show('conductivity', conductivity)}), settles when it drains and differs from place to place. Prefer other ground, ` +
    `or have it measured.`,
  'kersten-outside-range': ({ moisture, least }, show) =>
    `At ${show('moisture on dry basis', moisture)} of water the soil is drier than those Kersten’s equation was made from ` +
    `(${show('moisture on dry basis', least)}); it is shown where it can be computed and does not count.`,
  'porosity-outside-model': ({ model, porosity, low, high }, show) =>
    `${show('fraction', porosity)} of the soil is pores. The equation of Lu and others (${model === 'lu-2007' ? '2007' : '2014'}) was made from soils of ` +
    `${show('fraction', low)} to ${show('fraction', high)}; beyond them its line of dry soil is only drawn further.`,
  'saturation-outside-model': ({ saturation, low }, show) =>
    `Only ${show('fraction', saturation)} of the pores hold water. Up to ${show('fraction', low)} Johansen’s equation takes such soil as wholly dry, and there it ` +
    `reads low.`,
  'density-outside-model': ({ dryDensity, low }, show) =>
    `At ${show('density', dryDensity)} the soil is looser than Campbell’s equation can follow: below ${show('density', low)} it has soil conduct better the ` +
    `looser it is. Do not count on its value.`,
  'frozen-model-with-little-ice': ({ liquidShare, high }, show) =>
    `${show('fraction', liquidShare)} of the water in this frozen soil is still liquid. The models’ forms for frozen soil were made where most of it is ice; ` +
    `with more than ${show('fraction', high)} of it liquid they may read below the soil both before and after it freezes. The truth lies between those two.`,
  'peat-model-reads-high': ({ conductivity, excess }, show) =>
    `The model gives ${show('conductivity', conductivity)} for this peat. Peat that was measured with full pores conducted up to ${show('fraction', excess)} less; ` +
    `take less, or have it measured.`,
  'quartz-near-step': ({ quartzFraction, poorer, richer }, show) =>
    `The quartz share of ${show('fraction', quartzFraction)} lies at a step of the model: ${show('conductivity', poorer)} just below it and ` +
    `${show('conductivity', richer)} just above. Take the lower one unless the quartz was measured well.`,
  'conductivity-from-handbook': ({ low, estimate, high }, show) =>
    `The conductivity, ${show('conductivity', estimate)}, is read from handbooks by a word; they range from ${show('conductivity', low)} to ` +
    `${show('conductivity', high)}. A sample from the trench narrows that.`,
  'measured-conductivity-high': ({ conductivity, most }, show) =>
    `A measured conductivity of ${show('conductivity', conductivity)} is more than soil has: beyond ${show('conductivity', most)} there is only rock or solid ` +
    `quartz. Check the probe, its calibration and the units of the reading.`,
  'heat-capacity-assumed': ({ heatCapacity }, show) =>
    `No heat capacity was given; ${show('heat capacity', heatCapacity)} is assumed. It moves the length of the loop little.`,
  'gravelly-soil-unmeasured': ({ gravel, limit }, show) =>
    `${show('mass fraction', gravel)} of the soil is stones. From ${show('mass fraction', limit)} on the models stand on no measured soil here, and a core or a ` +
    `bag takes too few of the stones: measure the density in a hole filled with water or sand, or the conductivity with a probe.`,
  'conductivity-error-mostly-by': ({ cause, share }, show) =>
    `${show('fraction', share)} of the square of the error of the conductivity comes from ${ERROR_CAUSES[cause].from}. ${ERROR_CAUSES[cause].advice}`,
  'sampled-in-wet-season': ({ sampledOn, moisture, driestMoisture, conductivity, driestConductivity }, show) =>
    `Sampled about ${show('day of year', sampledOn)}, in the wet half of the year, with ${show('moisture on dry basis', moisture)} of water. At the end of a dry summer it may ` +
    `be ${show('moisture on dry basis', driestMoisture)}, and conduct ${show('conductivity', driestConductivity)} instead of ${show('conductivity', conductivity)}. ` +
    `Check cooling with the dry state, or sample again when it is dry.`,
  'moisture-carried-by-rule': ({ heldMoisture, driestShare }, show) =>
    `The driest and the wettest state follow from a rule, not from weather: the soil is taken to hold about ${show('moisture on dry basis', heldMoisture)} after rain has ` +
    `drained, and ${show('fraction', driestShare)} of its water at the end of summer. A second sample in the other season replaces it.`,
  'soil-log-starts-deep': ({ logTop, wanted }, show) =>
    `The soil log begins at ${show('length', logTop)}; its first layer is continued up to the surface. Most of the long way of the heat is up there: ` +
    `log from ${show('length', wanted)} on.`,
  'soil-log-too-shallow': ({ logBottom, pipeDepth, wanted }, show) =>
    `The soil log ends at ${show('length', logBottom)}, the lowest pipe lies at ${show('length', pipeDepth)}; the last layer is continued downward. ` +
    `Log down to ${show('length', wanted)}.`,
  'peat-in-log': ({ top, bottom, conductivity }, show) =>
    `Peat from ${show('length', top)} to ${show('length', bottom)}: it conducts poorly (${show('conductivity', conductivity)}), shrinks when it drains ` +
    `and does not carry a trench wall. Go round it or above it, and keep people out of the trench beside it.`,
  'made-ground-in-log': ({ top, bottom }, show) =>
    `Made ground from ${show('length', top)} to ${show('length', bottom)}: it differs from step to step and may hide pipes, cables, rubble or waste. ` +
    `Find out what it is before digging; a sample of it speaks for its own place only.`,
  'rock-without-bedding': ({ top, thickness }, show) =>
    `The trench reaches rock at ${show('length', top)} and no bedding is given. Dig so much deeper and lay ${show('length', thickness)} of fines or sand ` +
    `under the pipe and over it; a stone that presses on the pipe wears it through in time.`,
  'bedding-across-layers': ({ top, thickness }, show) =>
    `The bedding, ${show('length', thickness)} thick, lies across the interface of two layers at ${show('length', top)}. It is reckoned with the mean of both ` +
    `about it, which may be off by a twentieth of the conductivity; give the trench as fill and it is not.`,
  'water-table-in-trench': ({ waterTable, trenchDepth }, show) =>
    `The water table stands at ${show('length', waterTable)}, above the bottom of the trench at ${show('length', trenchDepth)}. Good for the loop, bad for the ` +
    `trench: walls slump and the empty pipe floats. Nobody goes in before it is drained and supported; ask a licensed excavator and keep to the local rules.`,
  'layers-felt-late': ({ least, greatest }, show) =>
    `The layers differ (${show('conductivity', least)} to ${show('conductivity', greatest)}). The effective conductivity is that of the long run; in the months of ` +
    `a winter, before the further layers are felt, it was up to a tenth higher in trials with poor ground on top and a twentieth lower with poor ground below.`,
  'log-resistance-rule-rough': ({ conductivity, worstError }, show) =>
    `${show('conductivity', conductivity)} comes from the rule of logarithms, which was up to ${show('fraction', worstError)} off where it was tried in ground that ` +
    `differs so much. The sum over the layers has no such error.`,
  'trench-fill-around-pipes': ({ fillConductivity, conductivity, unfilled }, show) =>
    `The trench is filled with soil of ${show('conductivity', fillConductivity)}. Hours and days feel little else than what lies about the pipes; in the long run the ground is worth ` +
    `${show('conductivity', conductivity)}, against ${show('conductivity', unfilled)} if the trench were not there. Fill in thin lifts, without clods, and work it in well about the pipes.`,
  'fill-density-assumed': ({ firstWinterShare, settledShare }, show) =>
    `The fill is taken to lie at ${show('fraction', firstWinterShare)} of the native dry density in its first winter and at ${show('fraction', settledShare)} once it has ` +
    `settled. Both are custom, not measured; a sand cone in the filled trench would tell.`,
  'ground-conductivity-class': ({ class: middle, lowClass, highClass, low, estimate, high }, show) =>
    `${show('conductivity', estimate)} is ${middle} ground for a loop; from ${show('conductivity', low)}, ${lowClass}, to ${show('conductivity', high)}, ${highClass}, ` +
    `is likely. The word decides nothing: the length follows from the number and its band.`,
};
