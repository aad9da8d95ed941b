import { crossed } from './cross.ts';
import { fragmentsOf, wayThrough, type Fragment } from './fragments.ts';
import { back, dartsFrom, edgeOf, head, tail, type Dart, type Edge } from './graph.ts';

/** A graph laid in the plane. */
export interface Embedding {
  /** The first one closes the graph. Those of a part that crosses others follow each other along it. */
  readonly edges: readonly Edge[];
  /** The faces as closed walks of darts, each with its face on the left. */
  readonly faces: readonly (readonly Dart[])[];
  /** The vertices from where the first edge begins to where it ends: each of the others has neighbours before it and after it. */
  readonly order: readonly number[];
  /** Vertices of this number and above are crossings. */
  readonly crossings: number;
}

/** The part of a walk from one vertex to the next place where it is at another. */
function arc(edges: readonly Edge[], face: readonly Dart[], from: number, to: number): Dart[] {
  const first = face.findIndex((dart) => tail(edges, dart) === from);
  const turned = [...face.slice(first), ...face.slice(0, first)];
  return turned.slice(0, turned.findIndex((dart) => head(edges, dart) === to) + 1);
}

/** A graph while it is being laid in the plane. */
class Plane {
  readonly edges: Edge[];
  faces: (readonly Dart[])[];
  readonly vertices: Set<number>;
  readonly placed = new Set<number>([0]);
  readonly order: number[];
  #next: number;

  constructor(edges: readonly Edge[], count: number) {
    this.edges = [...edges];
    this.#next = count;
    const [s, t] = [tail(edges, 0), head(edges, 0)];
    this.order = [s, t];
    this.vertices = new Set(this.order);
    const whole = [0, 1];
    this.faces = [whole];
    const others = (dartsFrom(edges).get(s) ?? []).filter((dart) => dart !== 0);
    this.lay(wayThrough(edges, others, new Set([t]), this.vertices), whole);
  }

  /** Draws a way through a face between two vertices on its edge. */
  lay(way: readonly Dart[], face: readonly Dart[]): void {
    const { edges, order } = this;
    const [from, to] = [tail(edges, way[0] ?? -1), head(edges, way.at(-1) ?? -1)];
    const backwards = way.map(back).reverse();
    this.faces = this.faces.flatMap((each) =>
      each === face
        ? [
            [...arc(edges, face, to, from), ...way],
            [...arc(edges, face, from, to), ...backwards],
          ]
        : [each],
    );
    const inner = way.slice(1).map((dart) => tail(edges, dart));
    const ahead = order.indexOf(from) < order.indexOf(to);
    order.splice(order.indexOf(ahead ? from : to) + 1, 0, ...(ahead ? inner : inner.reverse()));
    for (const vertex of inner) this.vertices.add(vertex);
    for (const dart of way) this.placed.add(edgeOf(dart));
  }

  /** Puts a vertex on an edge, placed or not, and gives the darts before and after it. */
  split(dart: Dart, vertex: number): readonly [near: Dart, far: Dart] {
    const { edges, order } = this;
    const number = edgeOf(dart);
    const more = edges.length;
    const { from, to, part } = edges[number] ?? { from: -1, to: -1, part: -1 };
    edges[number] = { from, to: vertex, part };
    edges.push({ from: vertex, to, part });
    if (this.placed.has(number)) {
      this.placed.add(more);
      this.vertices.add(vertex);
      order.splice(Math.min(order.indexOf(from), order.indexOf(to)) + 1, 0, vertex);
    }
    const halves = (each: Dart): readonly [Dart, Dart] =>
      each % 2 === 0 ? [each, 2 * more] : [2 * more + 1, each];
    this.faces = this.faces.map((face) =>
      face.flatMap((each) => (edgeOf(each) === number ? halves(each) : [each])),
    );
    return halves(dart);
  }

  /** The faces that have all these vertices. */
  facesWith(vertices: readonly number[]): (readonly Dart[])[] {
    return this.faces.filter((face) => {
      const around = new Set(face.map((dart) => tail(this.edges, dart)));
      return vertices.every((vertex) => around.has(vertex));
    });
  }

  /** Draws a way of a fragment that no face has room for across as few edges as possible. */
  cross({ entries, contacts }: Fragment): void {
    const { edges, vertices } = this;
    const ways = entries.flatMap((entry) =>
      contacts.flatMap((end) => {
        const way = wayThrough(edges, [entry], new Set([end]), vertices);
        const over = way.length > 0 ? crossed(edges, this.faces, tail(edges, entry), end) : [];
        return way.length > 0 ? [{ way, over }] : [];
      }),
    );
    const { way, over } = ways.reduce((a, b) => (b.over.length < a.over.length ? b : a));
    let rest = way;
    for (const dart of over) {
      const vertex = this.#next++;
      this.split(dart, vertex);
      const [near, far] = this.split(rest[0] ?? -1, vertex);
      this.#layInside([near]);
      rest = [far, ...rest.slice(1)];
    }
    this.#layInside(rest);
  }

  /** Draws a way through the one face that has both its ends. */
  #layInside(way: readonly Dart[]): void {
    const ends = [tail(this.edges, way[0] ?? -1), head(this.edges, way.at(-1) ?? -1)];
    const [face] = this.facesWith(ends);
    if (face) this.lay(way, face);
  }
}

/**
 * Lays a graph in the plane that no vertex holds together alone; its first edge closes it, and is not crossed. What is laid last crosses
 * what lay there before, so another order may cross less. Where there is more than one crossing, several are tried: fewer of large
 * graphs, so that none takes long.
 */
export function embed(edges: readonly Edge[], count: number): Embedding {
  const [first, ...others] = edges;
  const found = laid(edges, count);
  if (!first || found.order.length < count + 2) return found;
  return others
    .slice(0, Math.min(24, 50000 / others.length ** 3))
    .map((_, i) => laid([first, ...others.slice(i + 1), ...others.slice(0, i + 1)], count))
    .reduce((best, next) => (next.order.length < best.order.length ? next : best), found);
}

/**
 * Way after way is drawn through a face that has room for all that it belongs to, what has the fewest such faces first; where no face
 * has, across other edges. Method: G. Demoucron, Y. Malgrange and R. Pertuiset, Revue française de recherche opérationnelle 8 (1964)
 * 33–47 (from memory).
 */
function laid(edges: readonly Edge[], count: number): Embedding {
  const plane = new Plane(edges, count);
  for (;;) {
    const open = fragmentsOf(plane.edges, (edge) => plane.placed.has(edge), plane.vertices).map(
      (fragment) => ({
        fragment,
        faces: plane.facesWith(fragment.contacts),
      }),
    );
    const [first] = open
      .filter(({ faces }) => faces.length > 0)
      .sort((a, b) => Math.min(a.faces.length, 2) - Math.min(b.faces.length, 2));
    const [face] = first?.faces ?? [];
    if (first && face) {
      const { entries, contacts } = first.fragment;
      const near = entries.filter((dart) => tail(plane.edges, dart) === contacts[0]);
      plane.lay(wayThrough(plane.edges, near, new Set(contacts), plane.vertices), face);
    } else if (open[0]) plane.cross(open[0].fragment);
    else return { edges: plane.edges, faces: plane.faces, order: plane.order, crossings: count };
  }
}
