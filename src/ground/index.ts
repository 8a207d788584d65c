export { layoutShape, pipePositionShape, type Layout, type LayoutName, type PipePosition } from './layout.js';
export type {
  AreaCollectorSection,
  CustomSection,
  FourPipeSection,
  OnePipeSection,
  SixPipeSection,
  TrenchCount,
  TwoPipeSideBySideSection,
  TwoPipeStackedSection,
  UnequalTrench,
  UnequalTrenchesSection,
} from './sections.js';
export { customLayout, fourPipe, onePipe, sixPipe, twoPipeSideBySide, twoPipeStacked } from './layout-makers.js';
export { layoutFrom, layoutInputShape, type LayoutInput } from './layout-input.js';
export {
  groundResponseInputShape,
  groundSurfaceShape,
  type GroundResponse,
  type GroundResponseInput,
  type GroundSurface,
  type WallCondition,
} from './response.js';
export { groundResponse } from './ground-response.js';
export { pipeRowResistance, pipeRowShape, singlePipeResistance, singlePipeShape, type PipeRow, type SinglePipe } from './steady-resistance.js';
export {
  equalTemperatureInputShape,
  equalTemperatureResistance,
  type EqualTemperatureInput,
  type EqualTemperatureResistance,
} from './equal-temperature.js';
export { equalTemperatureGeometry, equalTemperatureResponse, type EqualTemperatureResponse } from './equal-temperature-response.js';
export { periodicResponse, periodicResponseInputShape, type PeriodicResponse, type PeriodicResponseInput } from './periodic-response.js';
export { exponentialResponse, type ExponentialResponse, type ExponentialTerm } from './exponential-response.js';
export {
  exponentialGeometry,
  type ExponentialGeometry,
  type ExponentialGeometryInput,
  exponentialGeometryInputShape,
} from './exponential-geometry.js';
export { exponentialPair, type ExponentialPair } from './exponential-pair.js';
export { coilPipe, coilPipeInputShape, coilPipeShape, type CoilPipe, type CoilPipeInput } from './coil-pipe.js';
export { areaCollector, collectorPlotShape, collectorRows, type CollectorPlot, type CollectorRows, unequalTrenches } from './field-makers.js';
export {
  overlappedCoilSectionShape,
  ringLayoutInputShape,
  ringLayoutShape,
  ringTrenchSectionShape,
  type OverlappedCoilSection,
  type RingLayout,
  type RingLayoutInput,
  type RingTrenchSection,
} from './ring-layout.js';
export { flatOverlappedCoil, ringLayoutFrom, ringTrench, uprightOverlappedCoil } from './ring-layout-makers.js';
export { ringResponseInputShape, type RingResponse, type RingResponseInput } from './ring-response-input.js';
export { exponentialRingResponse, ringResponse } from './ring-response.js';
export { exponentialFiniteTrench, finiteTrenchInputShape, finiteTrenchResponse, type FiniteTrenchInput } from './finite-trench.js';
export { outAndBack, outAndBackInputShape, type OutAndBack, type OutAndBackInput } from './out-and-back.js';
export {
  exponentialFilmResponse,
  filmResponse,
  filmResponseInputShape,
  periodicFilmInputShape,
  periodicFilmResponse,
  type FilmResponseInput,
  type PeriodicFilmInput,
} from './film-response.js';
export { surfaceHarmonicShape, type SurfaceHarmonic, type UndisturbedWave } from './surface-harmonics.js';
export { pipeGround, pipeGroundInputShape, type PipeGround, type PipeGroundInput, type PipeWeight } from './pipe-ground.js';
export { pipeWalls, pipeWallsInputShape, type PipeWalls, type PipeWallsInput } from './pipe-walls.js';
export { seasonalFilm, seasonalFilmInputShape, type SeasonalFilm, type SeasonalFilmInput } from './seasonal-film.js';
export { partlySealed, partlySealedInputShape, type PartlySealed, type PartlySealedInput } from './partly-sealed.js';
