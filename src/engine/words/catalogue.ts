import type { FormatData } from '../circuit/index.ts';
import type { ClaimData } from '../claims/index.ts';
import type { ExplainData } from '../explain/index.ts';
import type { MistakeData } from '../notation/index.ts';
import type { RuleData } from '../rules/index.ts';
import type { DescriptionData } from '../schematic/index.ts';
import type { CautionData, FaultData, ReasonData, RemarkData } from '../solve/index.ts';
import type { BecauseData } from '../whatif/index.ts';
import type { ElementData } from './element-codes.ts';

/** Every code that has a sentence, with the data the sentence needs. */
export interface Catalogue
  extends
    FormatData,
    MistakeData,
    FaultData,
    RemarkData,
    CautionData,
    ReasonData,
    RuleData,
    ExplainData,
    DescriptionData,
    BecauseData,
    ClaimData,
    ElementData {}
