/**
 * What a worksheet is: one topic's result as findings, figures, a page view, pictures and sheets.
 * Start at {@link secondbolt.worksheet.Worksheet}. This room uses {@code draw}, {@code shape} and
 * {@code measure}; it stands below the topics, which implement it, and below the notebook, which
 * shows it. A new kind of finding may be added freely; a change of {@link
 * secondbolt.worksheet.Figures} changes the names other programs read. Nothing that knows a topic,
 * a template or a file belongs here.
 */
package secondbolt.worksheet;
