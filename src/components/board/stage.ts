import {
  describeCircuit,
  isMeter,
  isSupply,
  type Component,
  type Drawing,
  type WrittenQuantity,
} from '../../engine/core.ts';
import { once, type Snapshot } from '../link/index.ts';
import type { Shot } from '../picture/index.ts';
import type { Moment } from './moment.ts';
import { componentName, liveText } from './component-text.ts';
import { DigitsLayer } from './digits-layer.ts';
import { Flow } from './flow.ts';
import { layoutOf, type StageStyle, type Undrawn } from './layout.ts';
import { MovingLayer } from './moving-layer.ts';
import { ribbonScale, scaleFor, type RibbonScale } from './ribbon-scale.ts';
import { StillLayer } from './still-layer.ts';
import { writer } from './written.ts';

const described = once(describeCircuit);

/** The three layers of a board: what moves, under what stands still, under the numbers. */
export class Stage {
  readonly still: StillLayer = new StillLayer();
  readonly #moving = new MovingLayer();
  readonly #digits = new DigitsLayer();
  readonly element: HTMLDivElement = document.createElement('div');
  #style: StageStyle = { symbols: 'iec', width: 640, shown: new Set(), label: '', quantities: '' };
  #scale: RibbonScale = { perAmpere: 0, brightest: 1 };
  #scaled: Snapshot['start'] | undefined;
  #flow: Flow | undefined;
  #drawing: Drawing | undefined;
  /** The texts that the values have room for; undefined as written. */
  #rooms: readonly (string | undefined)[] = [];
  #written: readonly WrittenQuantity[] = [];

  constructor() {
    this.element.className = 'stage';
    this.element.append(this.#moving.svg, this.still.svg, this.#digits.svg);
  }

  /** What is drawn. */
  get drawing(): Drawing | undefined {
    return this.#drawing;
  }

  /** Pixels for an ampere, as last drawn. */
  get perAmpere(): number {
    return this.#flow ? scaleFor(this.#flow.currents, this.#scale) : 0;
  }

  /** Lays the drawing out and takes its room; says why a circuit cannot be drawn. */
  plan(snapshot: Snapshot, style: StageStyle): Undrawn | undefined {
    const { circuit, start } = snapshot;
    this.#drawing = undefined;
    this.#style = style;
    const layout = layoutOf(snapshot, style);
    if (!layout) return 'too many';
    this.#rooms = layout.rooms;
    this.#written = layout.written;
    const drawing = layout.drawing();
    if (!drawing) return circuit.components.length > 0 ? 'part missing' : 'empty';
    this.#drawing = drawing;
    this.still.size(drawing);
    if (start !== this.#scaled) this.#scale = ribbonScale(start);
    this.#scaled = start;
    this.#flow = new Flow(circuit);
    this.#flow.read(snapshot); // the key to the ribbons takes its room together with the drawing
    return undefined;
  }

  /** Builds all layers for the circuit as it stands. */
  build(snapshot: Snapshot): void {
    const drawing = this.#drawing;
    if (!drawing || !this.#flow) return;
    const { components } = snapshot.circuit;
    const { shown } = this.#style;
    const live = new Set(components.filter((each) => this.#changes(each)).map(({ id }) => id));
    this.still.draw(drawing, shown, live);
    this.#moving.prepare(drawing, this.#flow, shown);
    this.#digits.prepare(drawing, live);
  }

  /** Draws what moves. */
  move(snapshot: Moment): void {
    if (!this.#flow) return;
    this.#flow.read(snapshot);
    const { perAmpere } = this;
    this.#moving.draw(this.#flow, perAmpere, this.#scale.brightest);
    const { comparison, held } = snapshot;
    const drawing = this.#style.shown.has('ribbons') ? this.#drawing : undefined;
    this.#moving.mark(comparison && held && drawing ? comparison.edgesOf(drawing, held, perAmpere) : '');
  }

  /** Writes the numbers. */
  write(snapshot: Snapshot): void {
    const text = textsOf(snapshot);
    const readings = writer()?.readingsOf(this.#style.quantities, snapshot);
    this.#digits.write((id) => readings?.get(id) ?? text(id, (component) => liveText(component, snapshot)));
  }

  /** Names the components, `reached` being the one in the Tab order, and tells the whole in words. */
  name(snapshot: Snapshot, reached: string | undefined): void {
    const text = textsOf(snapshot);
    const { quantities, shown, label } = this.#style;
    const spoken = shown.has('readings');
    this.still.name((id) => text(id, (component) => componentName(component, snapshot, spoken)), reached);
    const told = writer()?.toldOf(quantities, snapshot);
    this.still.describe(label, described(snapshot.circuit) + (told ? ` ${told}` : ''));
  }

  /** What a picture of the board has to show at this moment; undefined where nothing is drawn. */
  shot(snapshot: Moment | undefined): Shot | undefined {
    const [drawing, flow] = [this.#drawing, this.#flow];
    if (!snapshot || !drawing || !flow) return undefined;
    flow.read(snapshot);
    const { circuit, comparison, held } = snapshot;
    const { shown, symbols, width, label } = this.#style;
    const { perAmpere: scale } = this;
    const inOrder = (ids: readonly string[], values: Iterable<number>): ((id: string) => number) => {
      const byId = new Map([...values].map((value, place) => [ids[place], value]));
      return (id) => byId.get(id) ?? 0;
    };
    const rooms = new Map(circuit.components.map(({ id }, place) => [id, this.#rooms[place]]));
    const live = circuit.components.filter((each) => this.#changes(each));
    const ribbons = shown.has('ribbons') && {
      currents: inOrder(flow.ids, flow.currents),
      scale,
      ...(comparison && held && { held: comparison.edgesOf(drawing, held, scale) }),
    };
    const brightness = flow.powers.map((power) => Math.min(1, power / this.#scale.brightest));
    const glow = shown.has('readings') && { glow: inOrder(flow.lamps, brightness) };
    return {
      circuit,
      drawing,
      plan: { symbols, width, values: (id) => rooms.get(id), quantities: this.#written },
      numbers: new Map([
        ...live.map((each) => [each.id, liveText(each, snapshot)] as const),
        ...(writer()?.readingsOf(this.#style.quantities, snapshot) ?? []),
      ]),
      labels: shown.has('labels'),
      values: shown.has('values'),
      arrows: shown.has('arrows'),
      picture: { title: label, ...ribbons, ...glow },
    };
  }

  #changes(component: Component): boolean {
    const { shown } = this.#style;
    if (isMeter(component)) return shown.has('meters');
    const turns = isSupply(component) || 'range' in component;
    return turns && !component.hidden && shown.has('values');
  }
}

/** What is written of a component by its id; '' where there is none. */
function textsOf({ circuit }: Snapshot): (id: string, write: (component: Component) => string) => string {
  const byId = new Map(circuit.components.map((component) => [component.id, component]));
  return (id, write) => {
    const component = byId.get(id);
    return component ? write(component) : '';
  };
}
