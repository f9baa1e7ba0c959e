/**
 * Works the written words back with hands and compares what came out with the chart.
 *
 * <p>May be used by booklet, desk and cli.
 */
package edgewright.proof;
