/**
 * A run of the program as such: how far it is, what Ctrl-C means, how much memory there is. Start
 * at {@link secondbolt.app.run.Interrupt}. This room uses {@code lay.search}, whose searches it
 * tells of and ends. How progress looks may be changed freely; a search that went on after Ctrl-C,
 * or a notebook thrown away by it, would be a fault. What a command does belongs in {@code app}.
 */
package secondbolt.app.run;
