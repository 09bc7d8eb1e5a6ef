/** One class a rule: whether what the layout asks for can be bought, cut and stood up. */
package plycrag.check.making;
