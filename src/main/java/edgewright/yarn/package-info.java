/**
 * What depends on the yarn: difference and contrast of colours, amounts, hooks.
 *
 * <p>May be used by check, booklet, desk and cli.
 */
package edgewright.yarn;
