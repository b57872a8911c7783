/**
 * What to buy, what it costs, what stays over of the cloth and the hours kept, shown: the page, the
 * shopping list, findings and figures. Start at {@link secondbolt.supply.SupplyTopic}. This room
 * uses {@code supply.list}, {@code supply.cost}, {@code supply.left}, {@code supply.plan}, {@code
 * lay}, {@code lay.design}, {@code lay.plan}, {@code task} and the rooms below the topics. Words
 * may be changed freely; a change of when a thing is bought later sends her to the shop too early.
 * What a topic needs is said by that topic; nothing here knows of buttons or thread.
 */
package secondbolt.supply;
