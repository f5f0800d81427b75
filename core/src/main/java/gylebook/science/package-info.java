/// Plain functions, one class per phenomenon: numbers in, number out, no state and no clock.
@NullMarked
package gylebook.science;

import org.jspecify.annotations.NullMarked;
