/**
 * Judges whether hands can work a chart: one class a rule, findings as data with ordered remedies, and the rule
 * book with a page for each rule.
 *
 * <p>May be used by draw, booklet, desk and cli. It must stay unknown to hands, which bears witness against it.
 */
package edgewright.check;
