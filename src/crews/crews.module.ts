import { Global, Module } from '@nestjs/common';
import { CrewReader } from './crew-reader.js';
import { EquipmentReader } from './equipment-reader.js';

/** Crews with their hours, and the company's equipment. */
@Global()
@Module({
  providers: [CrewReader, EquipmentReader],
  exports: [CrewReader, EquipmentReader],
})
export class CrewsModule {}
