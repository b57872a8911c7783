/**
 * The seams as they are sewn: stitches, finishes, thread and needle. Start at {@link
 * secondbolt.sewing.SewingTopic}.
 */
package secondbolt.sewing;
