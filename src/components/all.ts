import './board/define.ts';
import './meter/define.ts';
import './resistor/define.ts';
import './rules/define.ts';
import './supply/define.ts';
import './switch/define.ts';
import './table/define.ts';
import './value/define.ts';
