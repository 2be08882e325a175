/** Other tasks than the one at hand: what of it may be otherwise, the values tried there, and what came of trying. */
package org.washwright.explain.vary;
