import type { ClimateInput } from '../climate/index.js';
import type { GroundResponse } from '../ground/index.js';
import type { FlowRegime, PipeDimensions } from '../pipe/index.js';
import type { Source } from '../references/index.js';
import type { LoopFluid } from './fluid-plan.js';
import type { ModeResult } from './loop-plan.js';

/** What tells which correlations a plan went through. */
export interface UsedFacts {
  readonly climate: ClimateInput;
  readonly response: Pick<GroundResponse, 'sources'>;
  readonly modes: { readonly heating?: Pick<ModeResult, 'resistance'>; readonly cooling?: Pick<ModeResult, 'resistance'> };
  readonly pipe: Pick<PipeDimensions, 'series'>;
  readonly header: Pick<PipeDimensions, 'series'>;
  readonly fluid: Pick<LoopFluid, 'fluid' | 'governedBy'>;
  /** Whether the water of a curve or of emitters was looked at. */
  readonly emits?: boolean;
  /** Whether there is hot water. */
  readonly makesHotWater?: boolean;
}

/** The wave in the ground; degree days of the loads; the curve of the unit and the boundaries of its year; wall, friction and roughness; the lengths beside the plan's. */
const ALWAYS: readonly Source[] = [
  'carslawJaeger1959',
  'kusudaAchenbach1965',
  'schoenauKehrig1990',
  'erbs1983',
  'fritschCarlson1980',
  'sepemo2012',
  'incroperaInternalFlow',
  'churchill1977',
  'plasticRoughness',
  'kavanaughRafferty1997',
  'bose1985',
];

const FILM: Readonly<Record<FlowRegime, readonly Source[]>> = {
  laminar: ['incroperaInternalFlow'],
  transitional: ['incroperaInternalFlow', 'gnielinski2013', 'gnielinski1976'],
  turbulent: ['gnielinski1976'],
};

const pipeSources = ({ series }: Pick<PipeDimensions, 'series'>): readonly Source[] => [
  series === 'metric' ? 'iso4427' : 'astmPolyethylenePipe',
  'ppiHandbook',
  'peConductivity2015',
  'peConductivity2021',
];

const fluidSources = ({ fluid, governedBy }: UsedFacts['fluid']): readonly Source[] => {
  if (fluid === 'water') return ['iapwsWater'];
  return governedBy === 'inhibitor floor' ? ['melinder2010', 'inhibitedGlycolSheets'] : ['melinder2010'];
};

/**
 * The sources of what a plan was computed with, beyond those that its findings and assumptions name.
 *
 * @param facts - what the plan went through
 * @returns keys of the bibliography, in the order of the computation; some may come twice
 */
export function usedSources({ climate, response, modes, pipe, header, fluid, emits = false, makesHotWater = false }: UsedFacts): readonly Source[] {
  const regimes = [modes.heating, modes.cooling].flatMap((mode) => (mode === undefined ? [] : [mode.resistance.regime]));
  return [
    ...(climate.from === 'monthly-air' ? (['leastSquares'] as const) : []),
    ...response.sources,
    ...ALWAYS,
    ...regimes.flatMap((regime) => FILM[regime]),
    ...pipeSources(pipe),
    ...pipeSources(header),
    ...fluidSources(fluid),
    ...(emits ? (['en442Emitters'] as const) : []),
    ...(makesHotWater ? (['iapwsWater'] as const) : []),
  ];
}
