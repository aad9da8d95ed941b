import './board/define.ts';
import './meter/define.ts';
import './resistor/define.ts';
import './rules/define.ts';
import './table/define.ts';
import './value/define.ts';
