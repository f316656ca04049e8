/** Files of readings. */
package org.loomproof.workshop.meter.reading;
