import type { Length, PipeResistance, Pressure, PressureGradient, Ratio, Shape, Temperature } from '../units/index.js';

/** The state of the film that a finding is about. */
interface FilmValues {
  readonly reynolds: Ratio;
  readonly film: PipeResistance;
  readonly wall: PipeResistance;
}

/** Values of the findings that the pipe room raises, by code. */
export interface PipeFindingValues {
  /** The fluid flows in layers; the film is counted as such. */
  'laminar-flow': FilmValues;
  /** Between laminar and turbulent, where the film is poorly known. */
  'transitional-flow': FilmValues;
  /** Within the limits of the viscosity the flow may be laminar or turbulent. */
  'flow-regime-open': { readonly lowReynolds: Ratio; readonly highReynolds: Ratio };
  /** In rings the flow stays laminar, where in straight pipe it would not. */
  'coil-laminar': { readonly reynolds: Ratio; readonly criticalReynolds: Ratio; readonly frictionRatio: Ratio };
  /** Hazen and Williams, who know no viscosity, lie off. */
  'hazen-williams-off': { readonly hazenWilliams: PressureGradient; readonly gradient: PressureGradient };
  /** Warmth takes some of the pressure rating. */
  'pipe-derated': { readonly rating: Pressure; readonly coldRating: Pressure; readonly temperature: Temperature };
  /** A bend is tighter than pipe may be bent from straight. */
  'bend-tight': { readonly bendRadius: Length; readonly leastBendRadius: Length };
}

const filmShape: Shape<FilmValues> = { reynolds: 'ratio', film: 'pipe resistance', wall: 'pipe resistance' };

/** Shapes of {@link PipeFindingValues}. */
export const pipeFindingShapes: { readonly [C in keyof PipeFindingValues]: Shape<PipeFindingValues[C]> } = {
  'laminar-flow': filmShape,
  'transitional-flow': filmShape,
  'flow-regime-open': { lowReynolds: 'ratio', highReynolds: 'ratio' },
  'coil-laminar': { reynolds: 'ratio', criticalReynolds: 'ratio', frictionRatio: 'ratio' },
  'hazen-williams-off': { hazenWilliams: 'pressure gradient', gradient: 'pressure gradient' },
  'pipe-derated': { rating: 'pressure', coldRating: 'pressure', temperature: 'temperature' },
  'bend-tight': { bendRadius: 'length', leastBendRadius: 'length' },
};
