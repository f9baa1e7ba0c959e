/**
 * What depends on the yarn: difference and contrast of colours, amounts, what is left, the names of hooks and the weights of
 * yarn.
 *
 * <p>May be used by check, booklet, desk and cli.
 */
package edgewright.yarn;
