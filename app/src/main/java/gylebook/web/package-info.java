/// The page and what it asks for.
///
/// It must not know files, disks or devices; what it shows is handed in. Front door:
/// [gylebook.web.PageServer].
@NullMarked
package gylebook.web;

import org.jspecify.annotations.NullMarked;
