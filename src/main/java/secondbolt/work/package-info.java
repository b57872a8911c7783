/**
 * The order of work: the steps of all topics, of the kind of garment and of the maker in one order,
 * with the day of each, what they wait for and where they can hurt; its page, its sheet and its
 * findings. Start at {@link secondbolt.work.WorkTopic}. This room uses {@code work.plan}, {@code
 * work.kind} and {@code work.order}, and of other topics only their names and what they give. Words
 * may be changed freely; a change of a code or of a figure's name breaks other programs. What a
 * step must follow belongs to the topic that gives it.
 */
package secondbolt.work;
