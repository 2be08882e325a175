/** Accounts, roles, workspaces; how a person or a program proves who it is. */
package org.washwright.access;
