package org.loomproof.workshop.planner.rule;

import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.planner.grammar.Enumeration;

/** What was looked through for one lead. */
public record Searched(LeadId lead, Enumeration enumeration) {}
