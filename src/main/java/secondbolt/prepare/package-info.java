/**
 * What is done to a cloth before it is cut or dyed: unpicking, freezing, washing, drying, pressing,
 * and what each tells of it. Start at {@link secondbolt.prepare.PrepareTopic}.
 */
package secondbolt.prepare;
