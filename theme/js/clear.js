/** What every page on a screen gets once it is shown: a way to clear all that the site keeps. */
import { ClearDevice } from "./clear-device.js";

ClearDevice.define();
