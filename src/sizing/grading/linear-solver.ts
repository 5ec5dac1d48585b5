/** A model for a solver of whole-number linear programs: the text in CPLEX LP format, and the names in it that are wanted back. */
export interface LinearModel {
  readonly text: string;
  readonly columns: readonly string[];
}

/** How long a solver may look, and where it may begin. */
export interface LinearOptions {
  /** Branches it may look into; not seconds, so that every machine stops at the same place. */
  readonly nodes: number;
  /** Values of columns in an answer that is known already; it need not name all of them. */
  readonly start?: Readonly<Record<string, number>>;
}

/** What a solver says. */
export interface LinearAnswer {
  /** "stopped": out of branches, with or without an answer. */
  readonly status: "optimal" | "infeasible" | "stopped";
  /** Null when it has no answer. */
  readonly values: Readonly<Record<string, number>> | null;
  /** No answer is better than this; null when it does not know. */
  readonly bound: number | null;
}

/** A solver that whoever calls the engine has loaded. The engine loads none itself: it stays the same in Node and in a browser. */
export interface LinearSolver {
  solve(model: LinearModel, options: LinearOptions): Promise<LinearAnswer>;
}

/** As much of the HiGHS package's loaded runtime as is used here. */
export interface HighsRuntime {
  createModel(source: { format: "lp"; data: string }): {
    readonly options: { set(options: Record<string, string | number | boolean>): unknown };
    readonly info: { get(name: string): number | bigint };
    getColByName(name: string): number;
    setSolution(start: { indices: number[]; values: number[] }): unknown;
    run(): unknown;
    getModelStatus(): number;
    getSolution(): { readonly colValue: Float64Array };
    dispose(): void;
  };
}

/** Status codes of HiGHS, and its code for "has an answer". */
const OPTIMAL = 7;
const INFEASIBLE = [8, 9];
const FEASIBLE = 2;

/** Makes a solver of the loaded HiGHS runtime: fixed seed, proof to the last millionth. */
export function highsSolver(runtime: HighsRuntime): LinearSolver {
  return {
    async solve({ text, columns }, { nodes, start = {} }) {
      const model = runtime.createModel({ format: "lp", data: text });
      try {
        model.options.set({
          output_flag: false,
          random_seed: 0,
          mip_rel_gap: 0,
          mip_abs_gap: 1e-7,
          mip_feasibility_tolerance: 1e-9,
          mip_max_nodes: nodes,
        });
        const begun = Object.keys(start);
        if (begun.length > 0) {
          model.setSolution({
            indices: begun.map((name) => model.getColByName(name)),
            values: begun.map((name) => start[name] as number),
          });
        }
        model.run();
        const status = model.getModelStatus();
        if (INFEASIBLE.includes(status)) return { status: "infeasible", values: null, bound: null };
        const has = Number(model.info.get("primal_solution_status")) === FEASIBLE;
        const { colValue } = model.getSolution();
        return {
          status: status === OPTIMAL ? "optimal" : "stopped",
          values: has
            ? Object.fromEntries(columns.map((name) => [name, colValue[model.getColByName(name)]!]))
            : null,
          bound: Number(model.info.get("mip_dual_bound")),
        };
      } finally {
        model.dispose();
      }
    },
  };
}
