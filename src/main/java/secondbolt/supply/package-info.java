/**
 * What is needed, what of it is to be bought, and what the garment costs. Start at {@link
 * secondbolt.supply.SupplyTopic}.
 */
package secondbolt.supply;
