/// A room. FAULT room FAULT room FAULT room
package gylebook.rig;
