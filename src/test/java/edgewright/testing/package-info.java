/**
 * What tests of all packages draw their charts from: charts written down as text, seeded random charts, and every chart of a
 * small size.
 */
package edgewright.testing;
