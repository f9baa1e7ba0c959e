/**
 * The pattern in words beside the chart. Words and chart point at each other through {@link edgewright.desk.work.Lit}.
 *
 * <p>What is shown, where its pieces stand and how it is read stitch by stitch knows no window.
 */
package edgewright.desk.pattern;
