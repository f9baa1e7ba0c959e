/**
 * Pictures of the finished border for the page of a shop: exact pixel sizes, the piece in a plain soft colour, a title or none.
 *
 * <p>May be used by cli. Begin at {@link edgewright.draw.shop.ShopPicture}.
 */
package edgewright.draw.shop;
