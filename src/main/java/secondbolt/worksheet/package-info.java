/**
 * What a worksheet is: one topic's result as findings, blocks of its page, sheets, figures, and
 * what it gives to others. Start at {@link secondbolt.worksheet.Worksheet}; {@link
 * secondbolt.worksheet.Subject} is what a finding is about and what a sheet shows. This room uses
 * {@code block}, {@code figure}, {@code garment}, {@code draw} and {@code measure}; it stands below
 * the topics, which make worksheets, and below the notebook, which shows them. A kind of subject
 * may be added freely; a change of which subject touches which changes the sheets that say DO NOT
 * CUT. Nothing that knows a topic, a template or a file belongs here.
 */
package secondbolt.worksheet;
