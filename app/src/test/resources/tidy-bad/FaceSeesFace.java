package gylebook.web;

import gylebook.store.DiskJournal; // FAULT ladder

final class FaceSeesFace {}
