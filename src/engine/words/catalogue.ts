import type { FormatData } from '../circuit/index.ts';
import type { MistakeData } from '../notation/index.ts';
import type { RuleData } from '../rules/index.ts';
import type { DescriptionData } from '../schematic/index.ts';
import type { CautionData, FaultData, ReasonData, RemarkData } from '../solve/index.ts';
import type { ElementData } from './element-codes.ts';

/** Every code that a page may have to say at once, with the data its sentence needs. */
export interface Catalogue
  extends
    FormatData,
    MistakeData,
    FaultData,
    RemarkData,
    CautionData,
    ReasonData,
    RuleData,
    DescriptionData,
    ElementData {}
