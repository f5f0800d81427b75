package gylebook.rig;

/// A comment that somebody's formatter has cut in
// two. // FAULT comment
final class BrokenComment {
  /** Written in the other form. FAULT comment */
  int a;
}
