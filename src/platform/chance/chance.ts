import { Injectable } from '@nestjs/common';

/** The one source of chance for what need not be secret, such as pauses; tests give numbers of their own. */
export abstract class Chance {
  /** A number from 0 up to, but not including, 1. */
  abstract next(): number;
}

/** Chance of the machine. */
@Injectable()
export class SystemChance extends Chance {
  override next(): number {
    return Math.random();
  }
}
