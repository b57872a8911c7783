/**
 * The benchmark of the notebook, apart from the tests, which never time anything. Start at {@link
 * secondbolt.bench.NotebookBenchmark}. It uses {@code app} as a maker does, and PDFBox for the
 * floor, which uses nothing of the house. How often and in which order is run may be changed
 * freely; figures are compared within one run only, so a change costs nothing else. No test and no
 * check of what the notebook says belongs here.
 */
package secondbolt.bench;
