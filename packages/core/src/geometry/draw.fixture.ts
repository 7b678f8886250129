export { drawFrom, type Draw } from "@nightspan/checks";
