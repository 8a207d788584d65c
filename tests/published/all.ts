import type { PublishedCheck } from '../support/published.js';
import { buildingChecks } from './building.checks.js';
import { buildingBillChecks } from './building-bills.checks.js';
import { buildingBinChecks } from './building-bins.checks.js';
import { circuitChecks } from './circuit.checks.js';
import { circuitNetworkChecks } from './circuit-network.checks.js';
import { circuitPumpChecks } from './circuit-pump.checks.js';
import { circuitPurgeChecks } from './circuit-purge.checks.js';
import { climateChecks } from './climate.checks.js';
import { climateFitChecks } from './climate-fits.checks.js';
import { climateWinterChecks } from './climate-winter.checks.js';
import { weatherFileChecks } from './climate-weather-files.checks.js';
import { costChecks } from './cost.checks.js';
import { filmStateChecks } from './film-states.checks.js';
import { groundChecks } from './ground.checks.js';
import { fluidChecks } from './fluid.checks.js';
import { heatPumpChecks } from './heat-pump.checks.js';
import { heatPumpFormChecks } from './heat-pump-forms.checks.js';
import { heatPumpMapChecks } from './heat-pump-map.checks.js';
import { hotWaterChecks } from './hot-water.checks.js';
import { iceChecks } from './ice.checks.js';
import { operationChecks } from './operation.checks.js';
import { operationYearChecks } from './operation-year.checks.js';
import { pipeChecks } from './pipe.checks.js';
import { heatingSeasonChecks } from './season.checks.js';
import { sectionChecks } from './sections.checks.js';
import { settlingChecks } from './settling.checks.js';
import { soilChecks } from './soil.checks.js';
import { soilLayerChecks } from './soil-layers.checks.js';
import { soilIdentificationChecks } from './soil-identification.checks.js';
import { stagedChecks } from './staged.checks.js';
import { unitChecks } from './units.checks.js';

/** Every outside check of the library. */
export const publishedChecks: readonly PublishedCheck[] = [
  ...groundChecks,
  ...unitChecks,
  ...soilChecks,
  ...soilLayerChecks,
  ...soilIdentificationChecks,
  ...fluidChecks,
  ...pipeChecks,
  ...filmStateChecks,
  ...operationChecks,
  ...operationYearChecks,
  ...sectionChecks,
  ...iceChecks,
  ...settlingChecks,
  ...circuitChecks,
  ...circuitNetworkChecks,
  ...circuitPumpChecks,
  ...circuitPurgeChecks,
  ...climateChecks,
  ...weatherFileChecks,
  ...climateFitChecks,
  ...climateWinterChecks,
  ...buildingChecks,
  ...buildingBillChecks,
  ...buildingBinChecks,
  ...hotWaterChecks,
  ...heatPumpChecks,
  ...heatPumpFormChecks,
  ...heatPumpMapChecks,
  ...stagedChecks,
  ...costChecks,
  ...heatingSeasonChecks,
];
