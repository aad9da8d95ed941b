import './board/define.ts';
import './resistor/define.ts';
import './value/define.ts';
